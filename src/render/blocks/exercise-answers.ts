import type { Element } from 'hast';
import type { Node } from 'mdast';
import { chapterIds } from '../../addresses/index.ts';
import type { RenderContext } from '../context.ts';
import { element } from '../hast.ts';
import { exerciseLines, exerciseNumber } from './exercise.ts';
import type { RenderComment } from './moves-block.ts';

/** Comes at the end of a text with exercises. */
export interface AnswersNode extends Node {
  type: 'courseAnswers';
  /** Indices of the exercises in `Chapter.blocks`. */
  exercises: readonly number[];
}

declare module 'mdast' {
  interface RootContentMap {
    courseAnswers: AnswersNode;
  }
}

/** The answers to a chapter's exercises, printed at its end; screens do not show them. */
export function renderAnswers(
  context: RenderContext,
  { exercises }: AnswersNode,
  renderText: RenderComment,
): Element | undefined {
  const { chapter, strings } = context;
  const answers = exercises.flatMap((index) => {
    const block = chapter.blocks[index];
    if (block?.kind !== 'exercise' || block.position === undefined) return [];
    const number = strings.exerciseNumber(exerciseNumber(chapter, block));
    return [
      element('p', { className: ['exercise-number'] }, [number], {
        exercise: chapterIds(chapter).ofNode(block, 0),
      }),
      ...exerciseLines(context, block, renderText, false),
    ];
  });
  if (answers.length === 0) return undefined;
  const title = element('p', { className: ['answers-title'] }, [strings.answers], {
    role: 'answers-title',
  });
  return element('section', { className: ['answers'] }, [title, ...answers], { role: 'answers' });
}
