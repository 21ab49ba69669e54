import type { Course } from '../../../src/model/index.ts';
import { chooseText } from '../../../src/publish/letter/choose-text.ts';
import { letterFrame } from '../../../src/publish/letter/letter-frame.ts';
import { mailColours } from '../../../src/publish/letter/mail-css.ts';
import { makeMailHtml } from '../../../src/publish/letter/mail-html.ts';
import { mailTree } from '../../../src/publish/letter/mail-tree.ts';
import { makePlainText } from '../../../src/publish/letter/plain-text.ts';
import { renderText } from '../../../src/publish/letter/render-text.ts';
import { element } from '../../../src/render/index.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { readHtml } from './html.ts';

type Choice = Parameters<typeof chooseText>[1];

const board = () =>
  element('img', { className: ['board'], src: '../images/board.png', alt: 'x' }, []);

/** Letters are sound HTML without anything that runs, and text without controls. */
export const soundLetters: Oracle<CourseRun> = {
  name: 'sound letters',
  *examine({ checked }) {
    if (checked === undefined) return;
    const { course } = checked;
    const { language, title } = course.settings;
    const colours = mailColours(course.theme?.look);
    for (const choice of choicesOf(course)) {
      const text = chooseText(course, choice);
      const frame = letterFrame(course, text, { site: undefined, page: undefined });
      const body = renderText(course, text, board, 'https://example.org/course');
      const tree = mailTree(body, () => ({ src: 'images/board.png', width: 10, height: 10 }));
      const html = makeMailHtml({ language, subject: title, preview: '', colours }, frame, tree);
      // The style sheet of the letter itself stands in its head.
      yield* readHtml(html.replace(/<style>.*?<\/style>/s, ''), true).faults;
      const plain = makePlainText(frame, undefined, body);
      const control = /(?![\n\t])\p{Cc}/u.exec(plain);
      if (control) yield `control character ${JSON.stringify(control[0])} in the plain text`;
    }
  },
};

/** One letter of each kind that the course has something for. */
function choicesOf(course: Course): Choice[] {
  const [chapter] = course.chapters;
  const names = Object.keys(course.labels).slice(0, 2);
  const choices: Choice[] = [];
  if (chapter) {
    choices.push({ chapter: chapter.id });
    const [section] = chooseText(course, { chapter: chapter.id }).sections;
    if (section?.trim()) choices.push({ chapter: chapter.id, section });
  }
  if (names.length > 0) choices.push({ positions: names });
  if (course.news.length > 0) choices.push({ news: undefined });
  return choices;
}
