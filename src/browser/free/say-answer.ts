import { numberedSan } from '../../chess/letters.ts';
import type { PlayedMove } from '../../chess/types.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { ChapterWords, FreeWords } from '../../contract/words.ts';
import { moveText } from '../../lookup/line-text.ts';
import type { PathMove } from '../../lookup/paths.ts';
import { placeHref } from '../../lookup/place-href.ts';
import { compose } from '../compare/compose.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import type { BoardAnswer, CourseAnswer, MoveAnswer } from './answer-move.ts';

type Inline = Node | string;

/** What the sentences need: the course, its words, and the page's. */
export interface Saying {
  readonly table: CourseTable;
  readonly words: FreeWords;
  readonly page: ChapterWords;
}

/** The answer to a move in sentences, with links to where the course speaks of it. */
export function sayAnswer(answer: MoveAnswer, move: PlayedMove, saying: Saying): Inline[] {
  const said = [
    ...sayCourse(answer.course, move, saying),
    ...(answer.board === undefined ? [] : [sayBoard(answer.board, saying)]),
  ];
  return said.flatMap((sentence, index) => (index === 0 ? sentence : [' ', ...sentence]));
}

/** A move that was played, with its number, in the letters of the page. */
export function nameOf(move: PlayedMove, { letters }: ChapterWords): string {
  return numberedSan(move, letters);
}

function sayCourse(answer: CourseAnswer, played: PlayedMove, saying: Saying): Inline[][] {
  const { words, page } = saying;
  const move = nameOf(played, page);
  switch (answer.kind) {
    case 'known':
      return sayKnown(answer, move, saying);
    case 'meets':
      return [compose(words.meets, { place: linkToPlace(answer.position, answer.last, saying) })];
    case 'not-mine': {
      const said = [compose(words.notMine, { move })];
      if (answer.plays.length === 0) return said;
      return [...said, compose(words.plays, { moves: listOf(answer.plays, saying) })];
    }
    case 'not-theirs': {
      const said = [compose(words.notTheirs, { move })];
      if (answer.related.length > 0) {
        const each = answer.related.map(({ replies, answer: reply }) =>
          compose(words.related, {
            replies: listOf(replies, saying),
            answer: linkTo(reply, saying),
          }),
        );
        return [...said, ...each];
      }
      if (answer.treats.length === 0) return said;
      return [...said, compose(words.treats, { replies: listOf(answer.treats, saying) })];
    }
    case 'beyond':
      return [[words.beyond]];
  }
}

function sayKnown(
  { role, step, advice, goesOn }: Extract<CourseAnswer, { kind: 'known' }>,
  move: string,
  saying: Saying,
): Inline[][] {
  const { words } = saying;
  const sentence = {
    advice: words.advice,
    reply: words.reply,
    option: advice.length === 0 ? words.optionAlone : words.option,
    bad: advice.length === 0 ? words.bad : words.badFor,
  }[role];
  const said = [compose(sentence, { move, advice: listOf(advice, saying) })];
  if (goesOn.length > 0) {
    const first = goesOn[0];
    const link = first === undefined ? [] : [linkTo(first, saying)];
    const rest = goesOn
      .slice(1)
      .map((each) => ` ${moveText(each, saying.page.letters, each.color === 'black')}`);
    said.push(compose(words.goesOn, { moves: [...link, ...rest] }));
  }
  const read = readOn(step, saying);
  if (read !== undefined) said.push([read, '.']);
  return said;
}

/** A link to where the move stands, by the title of its chapter. */
function readOn({ move }: PathMove, { table, words }: Saying): Node | undefined {
  const [place] = move.at;
  if (place === undefined) return undefined;
  const chapter = table.chapters[place[0]]?.title ?? '';
  return element('a', { href: placeHref(table, move.to, place) }, fill(words.read, { chapter }));
}

function linkToPlace(
  position: number,
  last: PathMove | undefined,
  { table, page }: Saying,
): Inline {
  const [place] = table.positions[position]?.at ?? [];
  const where = last === undefined ? page.start : `${page.after} ${moveText(last, page.letters)}`;
  if (place === undefined) return where;
  const chapter = table.chapters[place[0]]?.title ?? '';
  return element(
    'a',
    { href: placeHref(table, position, place) },
    fill(page.inChapter, { position: where, chapter }),
  );
}

function linkTo(step: PathMove, { table, page }: Saying): Inline {
  const text = moveText(step, page.letters);
  const [place] = step.move.at;
  if (place === undefined) return text;
  return element('a', { href: placeHref(table, step.move.to, place) }, text);
}

/** Moves one beside the other, the last with an "or". */
function listOf(steps: readonly PathMove[], saying: Saying): Inline[] {
  return steps.flatMap((step, index): Inline[] => {
    const before = index === 0 ? '' : index === steps.length - 1 ? ` ${saying.page.or} ` : ', ';
    return before === '' ? [linkTo(step, saying)] : [before, linkTo(step, saying)];
  });
}

function sayBoard(answer: BoardAnswer, { words, page }: Saying): Inline[] {
  switch (answer.kind) {
    case 'mate':
      return [words.mate];
    case 'stalemate':
      return [words.stalemate];
    case 'mates':
      return [fill(words.mates, { move: nameOf(answer.move, page) })];
    case 'wins': {
      // What no counting of pieces reaches is a mate at the end of the captures.
      const mate = answer.lost > mostMaterial;
      const move = nameOf(answer.capture, page);
      return [
        mate ? fill(words.mates, { move }) : fill(counted(words.wins, answer.lost), { move }),
      ];
    }
  }
}

/** Two sides' pieces with every pawn a queen, in pawns. */
const mostMaterial = 206;
