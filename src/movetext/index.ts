export { type ArchiveGame, type ArchiveReader, createArchiveReader } from './archive-reader.ts';
export { decodeGame, utf16Of } from './encoding.ts';
export {
  glyphMeaning,
  glyphSign,
  glyphsWithSigns,
  isAssessment,
  isMoveSuffix,
  isStandardGlyph,
} from './glyphs.ts';
export type { MakeMovetextOptions } from './make-movetext.ts';
export { makeMovetext } from './make-movetext.ts';
export { isOtherVariant } from './other-variant.ts';
export {
  type CommentPart,
  type PartName,
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
export { type MainLine, type MainLineStep, readMainLine } from './read-main-line.ts';
export type {
  Comment,
  Glyph,
  Line,
  Movetext,
  MovetextProblem,
  Span,
  Tag,
  Token,
  Variation,
  WrittenMove,
  WrittenNumber,
} from './types.ts';
export { problemKinds } from './types.ts';
