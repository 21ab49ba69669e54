import { initialPosition } from '../../../src/chess/index.ts';
import { drawBoard, drawCaptionedBoard, drawCard, drawCover } from '../../../src/draw/index.ts';
import { emblematic, pictureOf } from '../../../src/render/index.ts';
import type { Oracle } from '../case.ts';
import type { CourseRun } from './course-run.ts';
import { readXml } from './xml.ts';

/** Whatever titles and captions are: boards, cards and covers are XML, so that they can be drawn. */
export const soundPictures: Oracle<CourseRun> = {
  name: 'sound pictures',
  async *examine({ checked }) {
    if (checked === undefined) return;
    const { settings, chapters } = checked.course;
    const [chapter] = chapters;
    const shown = chapter && emblematic(chapter);
    const words = {
      course: settings.title,
      author: settings.author,
      language: settings.language,
      placement: (shown?.position ?? initialPosition).fen,
      view: shown?.block.view ?? 'white',
    } as const;
    const svgs = [await drawCard({ ...words, chapter: chapter?.title }), await drawCover(words)];
    const diagrams = chapters.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'diagram' ? (pictureOf(block) ?? []) : [])),
    );
    for (const picture of diagrams.slice(0, 3)) {
      svgs.push(drawBoard({ ...picture, theme: 'two-tone' }));
      svgs.push(await drawCaptionedBoard(picture, { text: settings.title }));
    }
    for (const svg of svgs) {
      for (const fault of readXml(svg).faults) yield fault;
    }
  },
};
