/** Changes of a chapter's text by range: what is to be written, and where, as edits that leave all the rest alone. */
export { addAnswer } from './add-answer.ts';
export { addLine } from './add-line.ts';
export { drawAt } from './draw-at.ts';
export { sayAt } from './say-at.ts';
export { setGlyph } from './set-glyph.ts';
export {
  EditRefusedError,
  type Edits,
  type NewDirective,
  type NewMove,
  type NewWords,
  type NodeInChapter,
  type WrittenChapter,
} from './types.ts';
