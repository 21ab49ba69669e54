export {
  bodyTexts,
  decodeAddress,
  documentsOf,
  fileAddress,
  readJudgement,
  writeLetters,
} from '../read/index.ts';
export { buildCourse } from './build-course.ts';
export { castledBefore } from './castled.ts';
export { courseId } from './course-id.ts';
export { firstSign } from './first-sign.ts';
export {
  assembleCourse,
  type ChapterFront,
  frontOf,
  saidByChapter,
} from './join/assemble-course.ts';
export { findUnsought } from './join/find-unsought.ts';
export { firstNames, type NameInCourse } from './join/first-names.ts';
export { type CourseAround, joinFrame } from './join/join-frame.ts';
export { matchPattern } from './join/match-pattern.ts';
export { mergeSaid } from './join/merge-said.ts';
export { mainLine } from './main-line.ts';
export { modelLimits } from './model-limits.ts';
export { placeOfNode } from './place-of-node.ts';
export { bareSan } from './play/find-moves.ts';
export { type ChapterToPlay, type PlayedChapter, playChapters } from './play/play-chapters.ts';
export type { SaidElsewhere } from './play/work.ts';
export { adviceOf } from './queries/advice.ts';
export { adviceIn, isAdvice, isBadSign, isMarkedBad } from './queries/advice-in-block.ts';
export { countWords, minutesToRead } from './queries/count-words.ts';
export { documentsInBook } from './queries/documents-in-book.ts';
export { faceOfChapter } from './queries/face-of-chapter.ts';
export { type Judgement, judgementsOf } from './queries/judgements.ts';
export { nameUses } from './queries/name-uses.ts';
export { namesWritten } from './queries/names-written.ts';
export {
  blockAt,
  chapterAt,
  chapterIndex,
  inCourseOrder,
  nameAt,
  nodeAt,
} from './queries/node-at.ts';
export {
  type BlockOutline,
  type ChapterOutline,
  diagramsIn,
  type NodeOutline,
  outlineBlock,
  outlinedBlockAt,
  outlinedNodeAt,
  outlineOf,
} from './queries/outline.ts';
export { pathTo } from './queries/path-to.ts';
export { type PathStep, pathsInto } from './queries/paths-into.ts';
export { playedTreesIn } from './queries/played-trees.ts';
export { positionsBefore } from './queries/positions-before.ts';
export { practisedIn } from './queries/practised.ts';
export { type ShownAt, shownAt } from './queries/shown-at.ts';
export { movesSpokenOf, speaksOf } from './queries/spoken-of.ts';
export { standsAt } from './queries/stands-at.ts';
export { taughtInCourse, taughtNodes } from './queries/taught-nodes.ts';
export { movesAndStarts, movesOf, textNodes, treesOf } from './queries/walk-chapter.ts';
export { slug } from './slug.ts';
export type * from './types.ts';
export { arrowMeanings } from './types.ts';
export { walkText } from './walk-text.ts';
export { withLateBody } from './with-late-body.ts';
