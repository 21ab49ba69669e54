import type { PlayedMove, Position } from '../../chess/types.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import type { FreePlay } from '../../contract/free-play.ts';
import type { ChapterWords } from '../../contract/words.ts';
import { noteName } from '../../lookup/course-notes.ts';
import { element, make } from '../element.ts';
import { loadTable } from '../load-table.ts';
import type { Spot } from '../spots.ts';
import { answerMove, type CourseAnswer } from './answer-move.ts';
import { sayAnswer } from './say-answer.ts';

/**
 * What to say of a played move. A move of the text needs nothing, unless the course doubts it: then, what the course
 * plays instead.
 */
export async function whatIsSaid(
  before: Position,
  move: PlayedMove,
  spot: Spot | undefined,
  given: FreePlay,
  page: ChapterWords,
): Promise<(Node | string)[]> {
  const table = await new Promise<CourseTable>(loadTable);
  const answer = answerMove(table, before, move);
  const { course } = answer;
  if (spot !== undefined && (course.kind !== 'known' || !isDoubtful(course))) return [];
  const said = sayAnswer(answer, move, { table, words: given.words, page });
  // On its own page the author's comment stands in the text.
  const comment = spot === undefined ? await commentOn(course, given) : undefined;
  return comment === undefined ? said : [...said, comment];
}

function isDoubtful({ role }: Extract<CourseAnswer, { kind: 'known' }>): boolean {
  return role === 'bad' || role === 'option';
}

/** What the author says of the move where the course has it. */
async function commentOn(course: CourseAnswer, { notes }: FreePlay): Promise<Node | undefined> {
  if (course.kind !== 'known' || notes === undefined) return undefined;
  await loadNotes(notes);
  const note = globalThis.courseNotes?.notes[noteName(course.step.from, course.step.move.san)];
  if (note === undefined || note.html === '') return undefined;
  const comment = make('span', 'own-comment');
  // The site's own, cleaned when it was built.
  comment.innerHTML = ` ${note.html}`;
  return comment;
}

function loadNotes(path: string): Promise<void> {
  if (globalThis.courseNotes !== undefined) return Promise.resolve();
  return new Promise((resolve) => {
    const script = element('script', { src: path });
    // Without them the answer only lacks the comment.
    for (const end of ['load', 'error']) script.addEventListener(end, () => resolve());
    document.head.append(script);
  });
}
