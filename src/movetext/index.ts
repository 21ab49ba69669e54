export { type ArchiveGame, createArchiveReader } from './archive-reader.ts';
export { decodeGame, utf16Of } from './encoding.ts';
export { glyphMeaning, glyphSign, glyphsWithSigns, isAssessment, isMoveSuffix } from './glyphs.ts';
export { makeMovetext } from './make-movetext.ts';
export { isOtherVariant } from './other-variant.ts';
export {
  type CommentPart,
  packText,
  partCommand,
  partsOfComment,
  unpackText,
} from './packed-text.ts';
export { eachGame, parseGames } from './parse-games.ts';
export { parseMovetext } from './parse-movetext.ts';
export type {
  PlainComment,
  PlainLine,
  PlainMove,
  PlainMovetext,
  PlainTag,
  PlainVariation,
} from './plain.ts';
export { type MainLine, readMainLine } from './read-main-line.ts';
export type { Comment, Line, Movetext, Span, Tag, Variation, WrittenMove } from './types.ts';
