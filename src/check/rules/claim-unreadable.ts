import { claimKinds, isClaimFault, parseClaim } from '../claims/index.ts';
import { claimsOf } from '../course-claims/claims-of.ts';
import { defineCourseRule } from '../course-rule.ts';
import type { CourseView } from '../view/index.ts';

export const claimUnreadable = defineCourseRule({
  id: 'claim-unreadable',
  severity: 'error',
  finds: 'A claim that is not written as one.',
  documentation: `
What stands in \`:claim[…]\`, or under \`claim\` in a diagram, is checked on the board, so it must be
one of the claims that the handbook lists, with the squares, files or sides that it asks for. Claims
are joined with \`and\` and \`or\`, each may be denied with \`not\`, and \`after Nf3:\` before them speaks of
what would be. A word of the trade that is no claim, such as \`hole\`, is answered with the claim that
says it.

The claims are ${claimKinds.map(({ name }) => `\`${name}\``).join(', ')}.
`,
  examples: [
    {
      title: 'A slip in the name',
      course: '```moves\n1. e4 {:claim[isolatd e4]}\n```',
      findings: [
        {
          at: '2:15-2:22',
          message: 'The claim `isolatd e4` cannot be read: there is no claim `isolatd`.',
          hint: 'Did you mean `isolated`?',
        },
      ],
    },
    {
      title: 'Words of the trade',
      course: '```moves\n1. e4 {:claim[hole d3]} e5 {:claim[not bad bishop f8]}\n```',
      findings: [
        {
          at: '2:15-2:19',
          message: 'The claim `hole d3` cannot be read: there is no claim `hole`.',
          hint: 'Did you mean `weak-square`, as in `weak-square d4`?',
        },
        {
          at: '2:40-2:50',
          message: 'The claim `not bad bishop f8` cannot be read: there is no claim `bad bishop`.',
          hint: 'Did you mean `bad-bishop`?',
        },
      ],
    },
    {
      title: 'Plain words',
      course:
        '```moves\n1. e4 {:claim[knight f6 is pinned]} e5 {:claim[a pawn up]} 2. d4 {:claim[control e5]} exd4 {:claim[nice game]}\n```',
      findings: [
        {
          at: '2:15',
          message:
            'The claim `knight f6 is pinned` cannot be read: these words are not written as a claim.',
          hint: 'Did you mean `pinned f6`?',
        },
        {
          at: '2:48',
          message: 'The claim `a pawn up` cannot be read: these words are not written as a claim.',
          hint: 'Did you mean `material`, as in `material +1`?',
        },
        {
          at: '2:74',
          message: 'The claim `control e5` cannot be read: there is no claim `control`.',
          hint: 'Did you mean `attacks`, as in `attacks c5 d4`?',
        },
        {
          at: '2:100',
          message: 'The claim `nice game` cannot be read: there is no claim `nice`.',
          hint: 'See `linewright explain claim-unreadable`.',
        },
      ],
    },
    {
      title: 'Moves without a colon behind them',
      course: '```moves\n1. e4 {:claim[after e5 open e]}\n```',
      findings: [
        {
          at: '2:24-2:28',
          message: 'The claim `after e5 open e` cannot be read: `open` is not written as a move.',
          hint: 'Write it like `after Nf3: pinned f3`, with a colon behind the moves.',
        },
      ],
    },
    {
      title: 'A square that is none, in a claim of two lines',
      course: '```moves\n1. e4 {:claim[open d and\nisolated e9]}\n```',
      findings: [
        {
          at: '2:8-3:13',
          message: 'The claim `open d and isolated e9` cannot be read: `e9` is no square.',
          hint: 'Write it like `isolated d5`.',
        },
      ],
    },
    {
      title: 'Words that are left over, in a diagram',
      course: '```diagram after="1. e4"\nclaim:\n  - "not open e nor open d"\n```',
      findings: [
        {
          at: '3:17-3:20',
          message:
            'The claim `not open e nor open d` cannot be read: nothing more is expected behind `e`, and `nor` stands there.',
          hint: 'Write it like `open e`.',
        },
      ],
    },
    {
      title: 'A comma in the place of `and`',
      course: '```moves\n1. e4 {:claim[open d, open e]}\n```',
      findings: [
        {
          at: '2:20',
          message:
            'The claim `open d, open e` cannot be read: claims are joined with `and`, not with a comma.',
        },
      ],
    },
    {
      title: 'A position that nobody has named',
      course: '```moves\n1. e4 {:here[main]} e5 {:claim[material 0 since mian]}\n```',
      findings: [
        {
          at: '2:49-2:53',
          message: 'No position of the course is named `mian`.',
          hint: 'Did you mean `main`?',
        },
      ],
    },
    {
      title: 'Claims that can be read, true or not',
      course: '```moves\n1. e4 {:claim[open e and not isolated e4 and chain c3 d4 e5]}\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const { statement, placeOf } of claimsOf(chapter, course)) {
      const claim = parseClaim(statement.argument, course.own.claims);
      if (isClaimFault(claim)) {
        // What is not run here may be a claim of the course's own.
        if (claim.isUnknown && course.own.leftOut) continue;
        const { reason, offset, length, hint } = claim;
        yield {
          place: placeOf(offset, length),
          message: `The claim \`${statement.argument}\` cannot be read: ${reason}.`,
          ...(hint === undefined ? {} : { hint }),
        };
        continue;
      }
      for (const { labels } of claim.parts) {
        for (const { text, offset } of labels) {
          // Where a name could not be placed, its own place has a finding.
          if (course.ask('given', text)) continue;
          yield {
            place: placeOf(offset, text.length),
            message: `No position of the course is named \`${text}\`.`,
            hint: nameHint(text, course),
          };
        }
      }
    }
  },
});

function nameHint(name: string, course: CourseView): string {
  const near = course.ask('nearestName', name);
  return near
    ? `Did you mean \`${near}\`?`
    : `Name one with \`:here[${name}]\` in a comment behind its move.`;
}
