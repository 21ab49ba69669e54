/**
 * `linewright/rules`: what a file of `rules/` imports. It is also what the handbook promises, so a name here stays.
 */
import {
  type ClaimDefinition,
  type ClaimKind,
  defineClaim as defineKind,
} from '../check/for-own-rules.ts';
import type { Severity } from '../diagnostics/index.ts';
import type { ChapterInShort, FoundByRule, RuleChapter, RuleCourse } from './types.ts';

export {
  ArgumentReader,
  type ClaimContext,
  type ClaimDefinition,
  type ClaimExample,
  empty,
  no,
  type Verdict,
  verdict,
  yes,
} from '../check/for-own-rules.ts';
export {
  attackersOf,
  attacksFrom,
  type Board,
  type Color,
  inCheck,
  isDark,
  isSquare,
  kingOf,
  legalMoves,
  listMoves,
  otherColor,
  type Piece,
  type PieceKind,
  type Position,
  pieceAt,
  pieceValues,
  readBoard,
  type Square,
  sideToMove,
  squares,
  squaresOf,
} from '../chess/index.ts';
export type { Place } from '../diagnostics/index.ts';
export type {
  ChapterInShort,
  FoundByRule,
  RuleBlock,
  RuleChapter,
  RuleCourse,
  RuleMove,
  RuleText,
} from './types.ts';

/** A rule of a course's own. It is asked of one chapter after the other, or of the whole course. */
export interface CourseRuleDefinition {
  /** Small letters, digits and hyphens; none of our own. `course.yaml` and `:allow[…]` name the rule by it. */
  readonly id: string;
  /** What its findings are unless `rules` in `course.yaml` says otherwise. */
  readonly severity: Severity;
  /** One sentence: what it finds. */
  readonly finds: string;
  /**
   * What it finds in a chapter. It must follow from the chapter and from what it asks of the course: it is kept until
   * one of these changes.
   */
  readonly inChapter?: (scope: {
    readonly chapter: RuleChapter;
    readonly course: RuleCourse;
  }) => Iterable<FoundByRule> | AsyncIterable<FoundByRule>;
  /** What it finds in the course as a whole. */
  readonly inCourse?: (scope: {
    readonly chapters: readonly ChapterInShort[];
    readonly course: RuleCourse;
  }) => Iterable<FoundByRule> | AsyncIterable<FoundByRule>;
}

/** A rule, marked as one. */
export interface DefinedRule extends CourseRuleDefinition {
  readonly defines: 'rule';
}

/** A claim, marked as one. */
export interface DefinedClaim extends ClaimKind {
  readonly defines: 'claim';
}

/** A rule of the course's own: the default export of a file of `rules/`, or one of a list. */
export function defineCourseRule(rule: CourseRuleDefinition): DefinedRule {
  return { ...rule, defines: 'rule' };
}

/** A claim of the course's own: the default export of a file of `rules/`, or one of a list. */
export function defineClaim<Arguments>(definition: ClaimDefinition<Arguments>): DefinedClaim {
  return { ...defineKind(definition), defines: 'claim' };
}
