import { numberSign } from '../../chess/letters.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { noteName, placeHref } from '../../lookup/index.ts';
import { make } from '../element.ts';
import { turnAfter } from './board-moves.ts';
import type { Ply, Session } from './session.ts';
import { printedNodes } from './words.ts';

/**
 * The line so far as running text, as a chapter has it: the moves that the reader found with what
 * the author says of them, and a blank where the next one is missing.
 */
export function lineText(session: Session, words: PracticeWords): HTMLElement {
  const paragraph = make('p', 'practice-line');
  let interrupted = true;
  session.line.forEach((ply, index) => {
    const turn = turnAfter(session, index);
    const sign = turn.color === 'white' || interrupted ? `${numberSign(turn)}\u00a0` : '';
    paragraph.append(index === 0 ? '' : ' ', moveLink(session, ply, sign, words));
    const note = ply.told ? noteOf(session, ply) : undefined;
    interrupted = note !== undefined;
    if (note !== undefined) paragraph.append(' ', note);
  });
  if ('task' in session.stage) {
    const turn = turnAfter(session, session.line.length);
    const sign = turn.color === 'white' || interrupted ? `${numberSign(turn)}\u00a0` : '';
    const blank = make('span', 'practice-blank');
    blank.setAttribute('role', 'img');
    blank.setAttribute('aria-label', words.practice.blank);
    paragraph.append(session.line.length === 0 ? '' : ' ', sign, blank);
  }
  return paragraph;
}

/** The author's comments on a move of the course. The site has rendered and cleaned them. */
export function noteOf(
  { course }: Session,
  { from, move }: Omit<Ply, 'told'>,
): HTMLElement | undefined {
  const html = course.notes.notes[noteName(from, move.san)]?.html ?? '';
  if (html === '') return undefined;
  const note = make('span', 'practice-note');
  note.innerHTML = html;
  return note;
}

/** A move that leads to its place in the course. */
function moveLink({ course }: Session, ply: Ply, sign: string, words: PracticeWords): HTMLElement {
  const { move, told } = ply;
  const link = make('a', told ? 'told' : 'lead', sign, ...printedNodes(move.san, words));
  const [place] = move.at;
  if (place !== undefined) link.href = placeHref(course.table, move.to, place);
  return link;
}
