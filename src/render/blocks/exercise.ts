import type { Element, ElementContent } from 'hast';
import { chapterIds, lineKinds } from '../../addresses/index.ts';
import { describePosition, sideToMove } from '../../chess/index.ts';
import { dataProperties } from '../../contract/index.ts';
import type { Chapter, ExerciseBlock, MoveNode } from '../../model/index.ts';
import type { RenderContext } from '../context.ts';
import type { BoardNode } from '../document.ts';
import { element } from '../hast.ts';
import { numberedMove } from '../notation.ts';
import { type RenderComment, setMoves } from './moves-block.ts';

/**
 * A question with its board. Without scripts the answer is folded below it. With scripts the reader finds it on the
 * board, for which each line carries its positions.
 */
export function renderExercise(
  context: RenderContext,
  block: ExerciseBlock,
  renderText: RenderComment,
): Element | undefined {
  const { chapter, strings } = context;
  const { position, view, lastMove } = block;
  if (position === undefined) return undefined;
  const turn = sideToMove(position);
  const number = exerciseNumber(chapter, block);
  const title = strings.exerciseNumber(number);
  const desc = describePosition(position, strings.position);
  const board: BoardNode = {
    type: 'board',
    picture: { placement: position.fen, view, turn, lastMove, title, desc },
  };
  const properties = {
    className: ['exercise'],
    ariaLabel: title,
    id: chapterIds(chapter).ofNode(block, 0),
    ...dataProperties('exercise', {
      view,
      turn,
      p: position.key,
      last: lastMove && lastMove.from + lastMove.to,
    }),
  };
  // The style sheet shows a hint when the one before it is open.
  const hints = block.hints.map((hint, index) =>
    fold('hint', strings.hint(index + 1, block.hints.length), [element('p', {}, renderText(hint))]),
  );
  const played = block.before?.move;
  const before = played
    ? [`${strings.justPlayed[played.color](numberedMove(played, strings))} `]
    : [];
  const ask = element('div', { className: ['exercise-ask'] }, [
    element('p', { className: ['exercise-number'] }, [title]),
    element('p', { className: ['ask'] }, [
      ...before,
      ...renderText(block.ask),
      ' ',
      element('span', { className: ['to-move'] }, [strings.toMove[turn]], { role: 'to-move' }),
    ]),
  ]);
  const help = element('div', { className: ['exercise-help'] }, [
    ...hints,
    fold('answer', strings.answer, exerciseLines(context, block, renderText, true)),
  ]);
  const body = element('div', { className: ['exercise-body'] }, [
    ask,
    element('course-board', { className: ['exercise-board'] }, [
      element('div', { className: ['board-stand'] }, [board]),
    ]),
    help,
  ]);
  return element('section', properties, [body], { role: 'exercise' });
}

/** The number of an exercise in its chapter, as readers see it. */
export function exerciseNumber({ blocks }: Chapter, { key }: ExerciseBlock): number {
  const exercises = blocks.filter(({ kind }) => kind === 'exercise');
  return exercises.findIndex((block) => block.key === key) + 1;
}

/** The lines of an exercise in order, to play through or only to read. */
export function exerciseLines(
  context: RenderContext,
  block: ExerciseBlock,
  renderText: RenderComment,
  playable: boolean,
): Element[] {
  const { strings, chapter } = context;
  const headings = { answer: undefined, also: strings.alsoGood, wrong: strings.notTheAnswer };
  return lineKinds.flatMap((kind) => {
    const heading = headings[kind];
    const lines = block[kind].map((nodes, index) => {
      const line = chapterIds(chapter).ofLine(block, kind, index);
      const idOf = playable ? { idOf: (node: MoveNode) => `${line}-${node.index}` } : {};
      return setMoves(context, { nodes, view: block.view, line: kind, ...idOf }, renderText);
    });
    if (heading === undefined || lines.length === 0) return lines;
    return [element('p', { className: ['line-heading'] }, [heading]), ...lines];
  });
}

function fold(
  name: 'hint' | 'answer',
  summary: string,
  content: readonly ElementContent[],
): Element {
  const children = [element('summary', {}, [summary]), ...content];
  return element(
    'details',
    { className: [name] },
    children,
    name === 'answer' ? { role: name } : {},
  );
}
