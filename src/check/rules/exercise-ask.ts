import { sideName, sideToMove } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { type ExerciseBlock, type ExerciseLine, mainLine } from '../../model/index.ts';
import { fallsShort, type Line } from '../ask/falls-short.ts';
import { type Goal, readAsk } from '../ask/read-ask.ts';
import { chapterBudget, type SearchBudget } from '../claims/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const exerciseAsk = defineCourseRule({
  id: 'exercise-ask',
  severity: 'warning',
  finds:
    'An exercise whose question names the wrong side, or asks for what its answer does not do.',
  documentation: `
A few sentences of a question can be understood for sure, in English, German and Spanish, and are held against
the board:

- who is to move: “White to move”, “What does Black play?”, “Weiß am Zug”, “Schwarz zieht und gewinnt”,
  “juegan negras”;
- mate in a number of moves: no defence may escape it behind the answer. A mate that is asked for without a
  number must be on the board at the end of the answer's line, or follow within three moves;
- a check that is to be given: the answer's line has one;
- material to be won: a pawn, two pawns, the exchange, a piece, a rook, the queen. It is judged where the answer's
  line shows three half-moves or more: if the line does not win so much (a queen may cost a rook), and if not even
  another move of the student's at its end could, the answer does not do what is asked.

A sentence that speaks of a wish, a threat, another move, or what is to be prevented says nothing here, and
neither does a question that can be answered with no.
`,
  examples: [
    {
      title: 'The wrong side',
      course:
        '```exercise after="1. e4 e5 2. Nf3"\nask: White to move. How is the pawn defended?\nanswer: 2... Nc6\n```',
      findings: [
        {
          at: '2:6-2:19',
          message: 'The question says “White to move”, but Black is to move.',
          hint: 'Correct the question or the position.',
        },
      ],
    },
    {
      title: 'No mate in two',
      course:
        '```exercise fen="6k1/5ppp/8/8/8/8/5PPP/R5K1 w - - 0 1"\nask: Find the mate in two!\nanswer: 1. h3\nalso: 1. Ra8# {is quicker.}\n```\n\n```exercise fen="6k1/5ppp/8/8/8/8/5PPP/R5K1 w - - 0 1"\nask: Mate in one.\nanswer: 1. Ra8#\n```',
      findings: [
        {
          at: '3:12-3:14',
          message: 'The question asks for “mate in two”, but no mate in 2 can be forced with 1.h3.',
          hint: 'Correct the answer or the question.',
        },
      ],
    },
    {
      title: 'A piece that is not won',
      course:
        '```exercise after="1. e4 e5 2. Nf3 Nc6 3. Bc4 Nf6"\nask: How does White win a piece?\nanswer: 4. Ng5 d5 5. exd5 Na5 6. Bb5+ c6 7. dxc6 bxc6\n```',
      findings: [
        {
          at: '3:12',
          message:
            'The question asks to “win a piece”, but with 4.Ng5 its line wins 1 pawn in all.',
        },
      ],
    },
    {
      title: 'German and Spanish',
      course:
        '```exercise after="1. f3 e5 2. g4"\nask: Weiß am Zug.\nanswer: 2... Qh4#\n```\n\n```exercise after="1. f3 e5 2. g4"\nask: Juegan negras y dan mate.\nanswer: 2... d5\n```\n\n```exercise after="1. f3 e5 2. g4"\nask: Schwarz zieht und setzt matt.\nanswer: 2... Qh4#\n```',
      findings: [
        {
          at: '2:6-2:17',
          message: 'The question says “Weiß am Zug”, but Black is to move.',
        },
        {
          at: '8:14',
          message:
            'The question asks for “Juegan negras y dan mate”, but with 2...d5 its line does not end in mate.',
        },
      ],
    },
    {
      title: 'What a question only speaks of',
      course:
        '```exercise after="1. e4 e5 2. Nf3"\nask: If it were White to move, he would take on e5. How does Black stop White from winning a pawn?\nanswer: 2... Nc6\n```\n\n```exercise after="1. e4 e5 2. Qh5 Nc6 3. Bc4"\nask: White threatens mate in one. Black to move.\nanswer: 3... g6\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    const search = { left: chapterBudget };
    for (const block of chapter.blocks) {
      if (block.kind === 'exercise') yield* judgeAsk(block, chapter.file, search);
    }
  },
});

function* judgeAsk(
  { position, ask, answer }: ExerciseBlock,
  file: string,
  search: SearchBudget,
): Generator<Finding> {
  if (!position) return;
  const turn = sideToMove(position);
  const { toMove, goals } = readAsk(ask, file, turn);
  if (toMove && toMove.color !== turn) {
    yield {
      place: toMove.place,
      message: `The question says “${toMove.text}”, but ${sideName(turn)} is to move.`,
      hint: 'Correct the question or the position.',
    };
  }
  for (const goal of goals) {
    for (const line of answer) yield* judgeGoal(goal, line, search);
  }
}

function* judgeGoal(goal: Goal, line: ExerciseLine, search: SearchBudget): Generator<Finding> {
  const [start, ...moves] = mainLine(line);
  const [first] = moves;
  if (!start?.position || !first?.written) return;
  // What cannot be played has a finding of its own, and the line says nothing of mate or material.
  if (moves.some(({ position }) => position === undefined)) return;
  const played: Line = { start: start.position, moves };
  const why = fallsShort(goal, played, search);
  if (why === undefined) return;
  const name = moveName(first, start);
  const asks = goal.kind === 'win' ? 'asks to' : 'asks for';
  yield {
    place: first.written.place,
    message: `The question ${asks} “${goal.text}”, but ${because(why, name)}.`,
    hint: 'Correct the answer or the question.',
    related: [{ place: goal.place, message: 'this is asked' }],
  };
}

function because(why: string, name: string): string {
  if (why.startsWith('its')) return `with ${name} ${why}`;
  return why.startsWith('it ')
    ? `${name} ${why.slice(3)}`
    : why.replace(/ with it$/, ` with ${name}`);
}
