import type { Finding, Place } from '../../diagnostics/index.ts';
import { walkText } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { linkFault } from '../shared/link-fault.ts';
import { problemsOf } from '../shared/problems-of.ts';
import { siblingFault } from '../shared/sibling-fault.ts';

export const newsLink = defineCourseRule({
  id: 'news-link',
  severity: 'warning',
  finds: 'News that links to something which the course has no more.',
  documentation: `
News stays while the course goes on: a name or a chapter that it links to may be gone. The words stay
and the link is left out; the rest of the course is published all the same. Where only a heading or a
position of a chapter is gone, the link leads to the top of the chapter.
`,
  examples: [
    {
      title: 'A name that was taken out, and one that is there',
      course: {
        'chapters/1.md': '```moves\n1. e4 {:here[main]} e5\n```',
        'news/2026-11-25.md':
          '---\ntitle: New\ndate: 2026-11-25\n---\n\n[Here](pos:main) and [there](pos:mian).',
      },
      findings: [
        {
          file: 'news/2026-11-25.md',
          at: '6:34-6:38',
          message: 'No position of the course is named `mian`, so this is shown without a link.',
          hint: 'Did you mean `main`?',
        },
      ],
    },
    {
      title: 'A board of a position that was taken out',
      course: {
        'chapters/1.md': '```moves\n1. e4 {:here[main]} e5\n```',
        'news/2026-11-25.md':
          '---\ntitle: New\ndate: 2026-11-25\n---\n\n```diagram at="main"\n```\n\n```diagram at="mian"\n```',
      },
      findings: [
        {
          file: 'news/2026-11-25.md',
          at: '9:16-9:20',
          message: 'No position of the course is named `mian`, so this board is not shown.',
          hint: 'Did you mean `main`?',
        },
      ],
    },
    {
      title: 'A chapter that was renamed',
      course: {
        'chapters/exchange.md': '```moves\n1. e4 e5\n```',
        'news/2026-11-25.md':
          '---\ntitle: New\ndate: 2026-11-25\n---\n\n[Here](../chapters/1.md#b1).',
      },
      findings: [
        {
          file: 'news/2026-11-25.md',
          at: '6:8-6:24',
          message: 'This link leads to ../chapters/1.md#b1, and nothing of that name is published.',
          hint: 'Name a chapter as `….md`, a file as `media/…`, or a whole address that begins with `https://`.',
        },
      ],
    },
    {
      title: 'A heading with other words',
      course: {
        'chapters/exchange.md': '## Marks and arrows\n\n```moves\n1. e4 e5\n```',
        'news/2026-11-25.md':
          '---\ntitle: New\ndate: 2026-11-25\n---\n\n[Marks](../chapters/exchange.md#marks).',
      },
      findings: [
        {
          file: 'news/2026-11-25.md',
          at: '6:32-6:38',
          message:
            'This leads to `#marks`, and “exchange” has no heading and no position of that name.',
          hint: 'Write a heading as its words in small letters, joined by hyphens; for a position, `[text](pos:name)`.',
        },
      ],
    },
  ],
  *inCourse(scope) {
    yield* problemsOf('news-link', scope);
    const { news, course } = scope;
    for (const { body, file, blocks } of news) {
      const unknown: { label: string; place: Place }[] = [];
      const missed: Finding[] = [];
      walkText(body.children, (node) => {
        const fault = linkFault(node, course, { file });
        if (fault) missed.push(fault);
        const lost = node.type === 'courseLink' && siblingFault(node, course);
        if (lost) {
          const { message, hint } = lost;
          missed.push({
            place: { file, ...node.labelRange },
            message: message.replace(/\.$/, ', so this is shown without a link.'),
            hint,
          });
        }
        if (node.type !== 'positionLink' || course.ask('name', node.label) !== undefined) return;
        unknown.push({ label: node.label, place: { file, ...node.labelRange } });
      });
      yield* missed;
      for (const { at } of blocks) {
        if (at === undefined || course.ask('name', at.name) !== undefined) continue;
        const near = course.ask('nearestName', at.name);
        yield {
          place: at.place,
          message: `No position of the course is named \`${at.name}\`, so this board is not shown.`,
          hint: near
            ? `Did you mean \`${near}\`?`
            : 'Show another position, or this one with `fen="…"`.',
        };
      }
      for (const { label, place } of unknown) {
        const near = course.ask('nearestName', label);
        yield {
          place,
          message: `No position of the course is named \`${label}\`, so this is shown without a link.`,
          hint: near
            ? `Did you mean \`${near}\`?`
            : 'Link to another position, or leave the link out.',
        };
      }
    }
  },
});
