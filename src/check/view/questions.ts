/**
 * What a rule may ask of the course around a chapter. Each question has an answer, and a print of it: two
 * courses whose prints are equal have the same answer, so what was found with the one stands with the other.
 * A print says as little as the answer: places are asked for by themselves, since they shift with every
 * word that is written above them.
 */
import { isTarget } from '../../addresses/index.ts';
import type { Position } from '../../chess/index.ts';
import { createSuggester, nearestName, type Place } from '../../diagnostics/index.ts';
import type { EngineFact } from '../../facts/index.ts';
import type { PatternBlock } from '../../model/index.ts';
import { expandPlace } from '../chapter-summary.ts';
import { type Aside, asideAt, isAdvised } from './asides.ts';
import type { CourseIndex, Occurrence } from './course-index.ts';
import { findCastled } from './find-castled.ts';
import { findMatches, type PatternPlace } from './find-matches.ts';
import { findTwins, firstReached, type PositionTold } from './find-twins.ts';
import { hashOf } from './hash-of.ts';
import { type Untold, untoldMeetings } from './meetings.ts';
import { type MoveNear, moveNear } from './move-near.ts';
import { findSibling, type SiblingFound } from './on-shelf.ts';

/** A question: how it is answered, and what is kept of the answer. */
interface Question<Answer> {
  readonly answer: (index: CourseIndex, about: string) => Answer;
  readonly print: (answer: Answer) => string;
}

/** A move that the course advises or judges, as others speak of it. */
export interface MoveTold {
  readonly san: string;
  /** `7...Be7`. */
  readonly name: string;
}

/** A line that ends in a position, by its last node; `start` is the key of the position its block starts from. */
export interface LineEnd {
  readonly chapter: string;
  readonly block: string;
  readonly node: number;
  readonly start: string;
}

/** A place in the words of the question `place`. */
export function placeName({ chapter, block, node }: Omit<LineEnd, 'start'>): string {
  return `${node} ${block} ${chapter}`;
}

function readPlaceName(name: string) {
  const [, node = '', block = '', chapter = ''] = /^(\d+) (\S+) (.*)$/s.exec(name) ?? [];
  return { chapter, block, node: Number(node) };
}

export interface Missed {
  readonly title: string;
  /** The `#…` that another one is probably a slip of. */
  readonly near?: string;
}

export interface MoveJudged {
  /** `7...Be7`. */
  readonly name: string;
  readonly advised: boolean;
  readonly option: boolean;
  /** The sign that calls it bad, by its glyph. */
  readonly bad?: number;
}

/** A move in the words of the questions `judged` and `judgedPlace`. */
export function moveAsked(key: string, san: string): string {
  return `${san} ${key}`;
}

/** A pattern in the words of the question `matches`. */
export function patternAsked({ pieces, empty, reversed }: PatternAsked): string {
  return JSON.stringify({ pieces, empty, reversed });
}

type PatternAsked = Pick<PatternBlock, 'pieces' | 'empty' | 'reversed'>;

function question<Answer>(
  answer: Question<Answer>['answer'],
  print: Question<Answer>['print'],
): Question<Answer> {
  return { answer, print };
}

const json = (answer: unknown): string => JSON.stringify(answer) ?? '';

const questions = {
  /** The position of a name; null where it is given and its move cannot be played. */
  name: question<Position | null | undefined>(
    ({ names }, name) => {
      const given = names.get(name);
      return given?.ref && (given.position ?? null);
    },
    (position) => (position === undefined ? '' : position === null ? 'unplayed' : position.fen),
  ),
  /** Whether a name is given, be it where no position is shown, which has a finding of its own. */
  given: question(
    ({ names }, name) => names.has(name),
    (isGiven) => (isGiven ? 'given' : ''),
  ),
  /** Where a name is given first, and what it stands behind. */
  namePlace: question<{ place: Place; move: Place | undefined } | undefined>(({ names }, name) => {
    const given = names.get(name);
    return given && { place: given.place, move: given.shown };
  }, json),
  /** What a link into another course leads to, as `siblingAsked` names it. */
  sibling: question<SiblingFound>(findSibling, (found) =>
    found === undefined || found.is === 'there' ? '' : json(found),
  ),
  /** The name that another one is probably a slip of. */
  nearestName: question((index, name) => nearest(index)(name), json),
  /**
   * What a link to `file#…` misses: the title of its chapter, and what was probably meant. Nothing where it
   * leads to something, or to no chapter.
   */
  missed: question<Missed | undefined>(missedBy, json),
  /** Where a chapter stands in the course, from 0. */
  order: question(({ order }, file) => order.get(file) ?? -1, json),
  /** What is advised in a position where that is first said. */
  advice: question<MoveTold | undefined>(
    (index, key) => moveTold(firstAdvice(index, key)),
    (advice) => (advice ? `${advice.san} ${advice.name}` : ''),
  ),
  advicePlace: question((index, key) => placeOf(firstAdvice(index, key)), json),
  /** How blocks judge a move in a position, of `moveAsked`; nothing where none plays it. */
  judged: question<MoveJudged | undefined>(
    (index, about) => moveJudged(index, playsOf(index, about)),
    (judged) => (judged ? json(judged) : ''),
  ),
  /** Where such a move is first called bad or an alternative. */
  judgedPlace: question((index, about) => {
    const plays = playsOf(index, about);
    const isJudged = ({ node }: Occurrence) => node.bad !== undefined || node.option;
    return placeOf(plays.find(isJudged) ?? plays[0]);
  }, json),
  /** The positions of the course that have a pattern, of `patternAsked`; nothing where too much would be looked at. */
  matches: question<readonly PatternPlace[] | undefined>(
    (index, about) => findMatches(index, JSON.parse(about) as PatternAsked),
    (matches) => (matches && matches.length > 0 ? hashOf(json(matches)) : json(matches)),
  ),
  /** The castlings that led to a position by the first way to it. */
  castled: question((index, key) => findCastled(index, key), json),
  /** Positions that a move of the course leads to, and that differ from this one in turn and rights alone. */
  twins: question<readonly PositionTold[]>(
    (index, key) => findTwins(index, key),
    (twins) => (twins.length > 0 ? json(twins) : ''),
  ),
  /** All judgements that seem to be dated. */
  datedJudgements: question(({ judgements }) => judgements, json),
  /** Where a position stands first, of those places that a move leads to. */
  positionPlace: question((index, key) => placeOf(firstReached(index, key)), json),
  verdict: question((index, key) => firstVerdict(index, key)?.node.verdict, json),
  verdictPlace: question((index, key) => placeOf(firstVerdict(index, key)), json),
  /** The moves that blocks play from a position, in SAN, in the order of the course. */
  covered: question(
    ({ positions }, key) => [
      ...new Set(positions.get(key)?.from.flatMap(({ node }) => node.san ?? [])),
    ],
    (moves) => moves.join(' '),
  ),
  /** The move that leads to a named position, and all on the ways to it and from it; only where it has one. */
  moveAt: question<MoveNear | undefined>(moveNear, (answer) => (answer ? json(answer) : '')),
  /** Whether a block plays a move from a position that is not called bad. */
  answered: question(
    ({ positions }, key) =>
      positions.get(key)?.from.some(({ node }) => node.bad === undefined) ?? false,
    (isAnswered) => (isAnswered ? 'answered' : ''),
  ),
  /**
   * Whether a name stands at or behind a move of the course's side that is called bad, or else one that is an
   * option, also in the blocks that its block starts from.
   */
  aside: question<Aside>(asideAt, (answer) => answer ?? ''),
  /**
   * Whether all lines that stop in a position do so with nothing but names that are given to it, so that one
   * sends its reader to the other.
   */
  circular: question(isCircular, (answer) => (answer ? 'circular' : '')),
  /** Whether some block of moves has a move of that name, such as `7...Be7`, with or without the sign of a check. */
  moveNamed: question((index, name) => namesOfMoves(index).has(withoutCheck(name)), json),
  /** Where the position is reached in another way than at first, and neither place says so. */
  untold: question<readonly Untold[]>(untoldMeetings, (untold) =>
    untold.length > 0 ? json(untold) : '',
  ),
  /** The lines that end with a position, in the order of the course, where more than one block has such. */
  ends: question<readonly LineEnd[]>(lineEnds, (ends) => (ends.length > 0 ? json(ends) : '')),
  /** Whether an engine has looked at the course; `about` is empty. Where it has not, nothing else is asked. */
  engineRan: question(
    ({ facts }) => facts.size > 0,
    (ran) => (ran ? 'ran' : ''),
  ),
  engine: question<EngineFact | undefined>(
    ({ facts }, key) => facts.at(key),
    (fact) => json(fact),
  ),
  /** Where the move stands that leads to a place, as `placeName` names it. */
  place: question((index, name) => placeOf(moveAt(index, readPlaceName(name))), json),
};

export type QuestionKind = keyof typeof questions;
export type AnswerTo<Kind extends QuestionKind> = ReturnType<(typeof questions)[Kind]['answer']>;

export interface Answered<Answer> {
  readonly answer: Answer;
  readonly print: string;
}

/** Many chapters ask the same: of the positions that all of them begin with above all. */
const answered = new WeakMap<CourseIndex, Map<QuestionKind, Map<string, Answered<unknown>>>>();

export function answerQuestion<Kind extends QuestionKind>(
  index: CourseIndex,
  kind: Kind,
  about: string,
): Answered<AnswerTo<Kind>> {
  const kinds = answered.get(index) ?? new Map<QuestionKind, Map<string, Answered<unknown>>>();
  answered.set(index, kinds);
  const all = kinds.get(kind) ?? new Map<string, Answered<unknown>>();
  kinds.set(kind, all);
  const known = all.get(about);
  if (known) return known as Answered<AnswerTo<Kind>>;
  const { answer, print } = questions[kind] as unknown as Question<AnswerTo<Kind>>;
  const found = answer(index, about);
  const made = { answer: found, print: print(found) };
  all.set(about, made);
  return made;
}

function missedBy({ targets, positions }: CourseIndex, link: string): Missed | undefined {
  const [, address = '', fragment = ''] = /^([^#]*)#(.*)$/s.exec(link) ?? [];
  const there = targets.get(address);
  if (there === undefined) return undefined;
  const shows = (key: string) =>
    positions.get(key)?.at.some(({ chapter }) => chapter === there.chapter) ?? false;
  if (isTarget(fragment, there, shows)) return undefined;
  const near = nearestName(fragment, there.ids);
  return { title: there.title, ...(near === undefined ? {} : { near }) };
}

function moveTold(occurrence: Occurrence | undefined): MoveTold | undefined {
  return occurrence && { san: occurrence.node.san ?? '', name: occurrence.node.name };
}

function placeOf(occurrence: Occurrence | undefined): Place | undefined {
  return occurrence && expandPlace(occurrence.chapter, occurrence.node.at);
}

function firstAdvice(index: CourseIndex, key: string): Occurrence | undefined {
  return index.positions.get(key)?.from.find((each) => isAdvised(index, each));
}

function firstVerdict({ positions }: CourseIndex, key: string): Occurrence | undefined {
  return positions.get(key)?.at.find(({ node }) => node.verdict !== undefined);
}

function lineEnds({ positions, blocks }: CourseIndex, key: string): LineEnd[] {
  const [first, ...others] = positions.get(key)?.at.filter(({ node }) => node.leaf) ?? [];
  const isElsewhere = ({ chapter, block }: Occurrence) =>
    chapter !== first?.chapter || block !== first.block;
  if (!first || !others.some(isElsewhere)) return [];
  return [first, ...others].map(({ chapter, block, node }) => {
    const start = blocks.get(`${chapter} ${block}`)?.[0]?.node.key ?? '';
    return { chapter, block, node: node.index, start };
  });
}

function moveAt({ blocks }: CourseIndex, { chapter, block, node }: Omit<LineEnd, 'start'>) {
  return blocks.get(`${chapter} ${block}`)?.[node];
}

function playsOf({ positions }: CourseIndex, about: string): readonly Occurrence[] {
  const [, san = '', key = ''] = /^(\S+) (.*)$/s.exec(about) ?? [];
  return positions.get(key)?.from.filter(({ node }) => node.san === san) ?? [];
}

function moveJudged(index: CourseIndex, plays: readonly Occurrence[]): MoveJudged | undefined {
  const [first] = plays;
  if (!first) return undefined;
  const bad = plays.find(({ node }) => node.bad !== undefined)?.node.bad;
  return {
    name: first.node.name,
    advised: plays.some((each) => isAdvised(index, each)),
    option: plays.some(({ node }) => node.option),
    ...(bad === undefined ? {} : { bad }),
  };
}

const moveNames = new WeakMap<CourseIndex, ReadonlySet<string>>();

function namesOfMoves(index: CourseIndex): ReadonlySet<string> {
  const known =
    moveNames.get(index) ??
    new Set(
      [...index.positions.values()].flatMap(({ from }) =>
        from.map(({ node }) => withoutCheck(node.name)),
      ),
    );
  moveNames.set(index, known);
  return known;
}

function withoutCheck(name: string): string {
  return name.replace(/[+#]$/, '');
}

const suggesters = new WeakMap<CourseIndex, (name: string) => string | undefined>();

function nearest(index: CourseIndex): (name: string) => string | undefined {
  const placed = () => [...index.names.values()].filter(({ ref }) => ref).map(({ name }) => name);
  const known = suggesters.get(index) ?? createSuggester(placed());
  suggesters.set(index, known);
  return known;
}

function isCircular({ positions, names }: CourseIndex, key: string): boolean {
  const here = positions.get(key)?.at ?? [];
  return here.every(({ node }) => {
    const { leaf, verdict, ended, tells = [], promises = [] } = node;
    const leadsTo = [...tells, ...promises];
    const isOwn = (name: string) => names.get(name)?.position?.key === key;
    return leaf && verdict === undefined && !ended && leadsTo.length > 0 && leadsTo.every(isOwn);
  });
}
