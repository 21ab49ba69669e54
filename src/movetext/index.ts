export { type ArchiveGame, createArchiveReader } from './archive/archive-reader.ts';
export { decodeGame, utf16Of } from './archive/encoding.ts';
export { glyphMeaning, glyphSign, glyphsWithSigns, isAssessment, isMoveSuffix } from './glyphs.ts';
export { isOtherVariant } from './other-variant.ts';
export {
  type CommentPart,
  packText,
  partCommand,
  partsOfComment,
  unpackText,
} from './packed-text.ts';
export { eachGame, parseGames } from './parse/parse-games.ts';
export { parseMovetext } from './parse/parse-movetext.ts';
export { type MainLine, readMainLine } from './parse/read-main-line.ts';
export type {
  PlainComment,
  PlainLine,
  PlainMove,
  PlainMovetext,
  PlainTag,
  PlainVariation,
} from './plain.ts';
export type { Comment, Line, Movetext, Span, Tag, Variation, WrittenMove } from './types.ts';
export { makeMovetext } from './write/make-movetext.ts';
