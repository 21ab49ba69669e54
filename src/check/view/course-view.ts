import type { EngineMargins, Side } from '../../model/index.ts';
import type { OwnChecks } from '../own-checks.ts';
import type { CourseIndex, NodesOfBlock } from './course-index.ts';
import { type AnswerTo, answerQuestion, type LineEnd, type QuestionKind } from './questions.ts';

/** A question that was asked, and the print of the answer that was used. */
export type Asked = readonly [kind: QuestionKind, about: string, print: string];

/** What a rule sees of the course around a chapter; it notes what was asked. */
export interface CourseView {
  readonly side: Side;
  /** From when on what an engine says is told. */
  readonly margins: EngineMargins;
  /** The course's language, as BCP 47. */
  readonly language: string;
  readonly own: OwnChecks;
  ask<Kind extends QuestionKind>(kind: Kind, about: string): AnswerTo<Kind>;
  /**
   * The nodes of the block that an answer of `ends` names. It is no question of its own: what leads to
   * the end is made of the block's text, which its key stands for, and of where it starts.
   */
  nodesOf(end: LineEnd): NodesOfBlock;
}

/** A view of a course, and all that has been asked of it so far. */
export function createCourseView(
  index: CourseIndex,
  { side, language, margins, own }: Pick<CourseView, 'side' | 'language' | 'margins' | 'own'>,
): { readonly view: CourseView; readonly asked: () => readonly Asked[] } {
  const known = new Map<QuestionKind, Map<string, unknown>>();
  const asked: Asked[] = [];
  return {
    asked: () => asked,
    view: {
      side,
      margins,
      language,
      own,
      nodesOf: ({ chapter, block }) => index.blocks.get(`${chapter} ${block}`) ?? [],
      ask(kind, about) {
        const before = known.get(kind) ?? new Map<string, unknown>();
        if (before.has(about)) return before.get(about) as never;
        known.set(kind, before);
        const { answer, print } = answerQuestion(index, kind, about);
        before.set(about, answer);
        asked.push([kind, about, print]);
        return answer;
      },
    },
  };
}
