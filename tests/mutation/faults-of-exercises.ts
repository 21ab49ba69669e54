/** Faults of exercises and diagrams: what they say is not what the course says. */
import { toString as plainText } from 'mdast-util-to-string';
import {
  isFenFault,
  isMate,
  legalMoves,
  type Position,
  parseFen,
  sideToMove,
} from '../../src/chess/index.ts';
import type { Place } from '../../src/diagnostics/index.ts';
import {
  adviceOf,
  type Course,
  type DiagramBlock,
  type ExerciseBlock,
  isMarkedBad,
  type MoveNode,
  nodeAt,
} from '../../src/model/index.ts';
import { type CourseInMemory, textOf } from './course-in-memory.ts';
import type { Fault, FaultKind } from './faults.ts';
import { plantAt } from './planting.ts';

function* stills({ course }: CourseInMemory): Generator<ExerciseBlock | DiagramBlock> {
  for (const { blocks } of course.chapters) {
    for (const block of blocks) {
      if (block.kind === 'exercise' || block.kind === 'diagram') yield block;
    }
  }
}

function* exercises(course: CourseInMemory): Generator<ExerciseBlock & { position: Position }> {
  for (const block of stills(course)) {
    const { position } = block;
    if (block.kind === 'exercise' && position) yield { ...block, position };
  }
}

/** What the course says of the moves in a position: those that are bad, and those that are alternatives. */
function movesOf(course: Course, { key }: Position) {
  return (course.graph[key]?.moves ?? []).map(({ san, at }) => {
    const nodes = at.flatMap((ref) => nodeAt(course, ref) ?? []);
    return {
      san,
      bad: nodes.some(isMarkedBad),
      option: nodes.some(({ statements }) => statements.some(({ name }) => name === 'option')),
      advised: adviceOf(course).get(key)?.[0]?.san === san,
    };
  });
}

/** From a move to the end of what is written behind it in its line of the file, quotes left out. */
function restOfLine(course: CourseInMemory, from: Place): Place {
  const whole = textOf(course, from.file);
  const length = /^[^\n"']*/.exec(whole.slice(from.start.offset))?.[0].length ?? 0;
  const end = { ...from.start, offset: from.start.offset + length };
  return { file: from.file, start: from.start, end };
}

/** The start of a question's text. */
function askOf({ ask, chapter }: ExerciseBlock): Place | undefined {
  const start = ask[0]?.position?.start;
  if (!start) return undefined;
  const point = { line: start.line, column: start.column, offset: start.offset ?? 0 };
  return { file: chapter, start: point, end: point };
}

function other(position: Position, but: readonly (string | undefined)[], seed: number) {
  const moves = legalMoves(position).filter((san) => !but.includes(san));
  return moves[(seed * 7919) % moves.length];
}

export const faultsOfExercises: readonly FaultKind[] = [
  {
    name: 'a false claim in the line of an exercise',
    rules: ['claim-false'],
    *plant(course) {
      for (const { answer, also, wrong } of exercises(course)) {
        for (const [, move] of [...answer, ...also, ...wrong]) {
          if (!move?.written) continue;
          const { end } = move.written.place;
          const place = { ...move.written.place, start: end };
          yield plantAt(course, place, ' {:claim[stalemate]}', `${move.written.san} is stalemate`);
        }
      }
    },
  },
  {
    name: 'an exercise whose answer the course calls bad',
    rules: ['exercise-wrong'],
    *plant(course) {
      const { graph } = course.course;
      for (const { position, answer, also } of exercises(course)) {
        for (const [, asked] of [...answer, ...also]) {
          const moves = graph[position.key]?.moves ?? [];
          const at = moves.find(({ san }) => san === asked?.move?.san)?.at ?? [];
          const [only, ...others] = at.flatMap((ref) => nodeAt(course.course, ref) ?? []);
          if (!only?.written || others.length > 0) continue;
          const { place } = only.written;
          yield plantAt(course, { ...place, start: place.end }, '?', `${only.written.san}?`);
        }
      }
    },
  },
  {
    name: 'an alternative of the course called wrong',
    rules: ['exercise-wrong'],
    *plant(course) {
      for (const { position, wrong } of exercises(course)) {
        const good = movesOf(course.course, position).find(
          ({ option, advised, bad }) => (option || advised) && !bad,
        );
        const [, move] = wrong[0] ?? [];
        if (!good || !move?.written) continue;
        yield plantAt(course, move.written.place, good.san, `${move.written.san} -> ${good.san}`);
      }
    },
  },
  {
    name: 'an answer that goes on against the advice',
    rules: ['exercise-wrong'],
    *plant(course) {
      const advice = adviceOf(course.course);
      for (const { answer } of exercises(course)) {
        for (const line of answer) yield* leaving(course, line, advice);
      }
    },
  },
  {
    name: 'a question that names the wrong side',
    limit: 'a question that names both sides may speak of either',
    rules: ['exercise-ask'],
    *plant(course) {
      const words = {
        white: ['Black to move. ', 'Schwarz am Zug. ', 'Juegan negras. '],
        black: ['White to play. ', 'Weiß zieht. ', 'Juegan las blancas. '],
      };
      for (const block of exercises(course)) {
        const place = askOf(block);
        if (!place) continue;
        for (const said of words[sideToMove(block.position)]) {
          const named = /White|Black/.test(plainText(block.ask));
          yield plantAt(course, place, said, said, !named);
        }
      }
    },
  },
  {
    name: 'a question that asks for mate where there is none',
    rules: ['exercise-ask'],
    *plant(course) {
      for (const block of exercises(course)) {
        const place = askOf(block);
        const [, first] = block.answer[0] ?? [];
        if (!place || !first?.position || isMate(first.position)) continue;
        for (const said of ['Mate in one. ', 'Matt in einem Zug. ', 'Mate en una. ']) {
          yield plantAt(course, place, said, said);
        }
      }
    },
  },
  {
    name: 'a diagram whose moves leave the advice',
    rules: ['diagram-advice'],
    *plant(course) {
      const advice = adviceOf(course.course);
      for (const { nodes } of stills(course)) {
        if (nodes.length > 1) yield* leaving(course, nodes, advice);
      }
    },
  },
  {
    name: 'a FEN that has lost its rights or its turn',
    rules: ['fen-rights'],
    *plant(course) {
      for (const { at, position } of stills(course)) {
        if (!at || !position) continue;
        const [placement, turn, castling, enPassant] = position.key.split(' ');
        const fens = [
          ...(castling === '-' ? [] : [`${placement} ${turn} - ${enPassant} 0 1`]),
          `${placement} ${turn === 'w' ? 'b' : 'w'} ${castling} - 0 1`,
        ];
        for (const fen of fens) {
          const read = parseFen(fen);
          if (isFenFault(read)) continue;
          yield plantAt(course, attribute(at.place), `fen="${fen}"`, `${at.name} -> ${fen}`);
        }
      }
    },
  },
];

/** `at="…"`, of the place of what stands in it. */
function attribute({ file, start, end }: Place): Place {
  return {
    file,
    start: { ...start, offset: start.offset - 'at="'.length },
    end: { ...end, offset: end.offset + 1 },
  };
}

/** Each move of the course's side that is the advice, replaced by one that the course has not. */
function* leaving(
  course: CourseInMemory,
  line: readonly MoveNode[],
  advice: ReturnType<typeof adviceOf>,
): Generator<Fault> {
  for (const { parent, move, written, index } of line) {
    const before = line[parent ?? -1]?.position;
    if (!before || !move || !written) continue;
    const advised = advice.get(before.key)?.[0]?.san;
    const known = movesOf(course.course, before).map(({ san }) => san);
    const san = other(before, known, index);
    if (advised !== move.san || san === undefined) continue;
    yield plantAt(course, restOfLine(course, written.place), san, `${move.san} -> ${san}`);
  }
}
