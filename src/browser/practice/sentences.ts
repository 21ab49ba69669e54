import { numberSign } from '../../chess/letters.ts';
import { fill } from '../../contract/sentence.ts';
import type { PracticeWords } from '../../contract/words.ts';
import { turnAfter } from './board-moves.ts';
import { adviceAt, type Session } from './session.ts';
import { adviceSquares } from './show-on-board.ts';
import { printed } from './words.ts';

/** What the page says at the present stage: of the last try, and what is wanted now. */
export function sentences(session: Session, words: PracticeWords): string {
  return [verdictIn(session, words), wishIn(session, words)]
    .filter((part) => part !== '')
    .join(' ');
}

function verdictIn({ verdict, line, start, course, stage }: Session, words: PracticeWords): string {
  if (verdict === undefined) return '';
  const { practice } = words;
  // A move that was found may have been answered since; others were tried in the position shown.
  const made = verdict.kind === 'right' || verdict.kind === 'given' || verdict.kind === 'shown';
  const at = made ? line.findLastIndex(({ told, move }) => told && move.san === verdict.san) : -1;
  const turn = turnAfter({ course, start }, at < 0 ? line.length : at);
  const move = at < 0 && made ? verdict.san : numberSign(turn) + printed(verdict.san, words);
  switch (verdict.kind) {
    case 'not-shown':
      return '';
    case 'shown':
      return stage.kind === 'read' || 'task' in stage ? practice.shown : '';
    default:
      return fill(practice[verdict.kind], { move });
  }
}

function wishIn(session: Session, words: PracticeWords): string {
  const { stage, verdict, line } = session;
  const { practice } = words;
  if (stage.kind === 'show') {
    const move = numberSign(turnAfter(session, line.length)) + printed(adviceAt(session), words);
    if (verdict?.kind === 'not-shown') return fill(practice.notShown, { move });
    const told = stage.task.show === 'changed' ? practice.changedMove : practice.newMove;
    return withReply(session, words, fill(told, { move }));
  }
  if (stage.kind !== 'ask') return '';
  if (verdict !== undefined && ['option', 'bad', 'other'].includes(verdict.kind)) return '';
  if (stage.hinted && verdict === undefined) {
    const { kind, from } = adviceSquares(session);
    return fill(practice.hinted, { piece: words.pieces[kind], square: from });
  }
  return withReply(session, words, practice.yourMove);
}

/** The other side's move before what is wanted. */
function withReply(session: Session, words: PracticeWords, wish: string): string {
  const reply = session.line.at(-1);
  if (reply === undefined || reply.told) return wish;
  const turn = turnAfter(session, session.line.length - 1);
  const move = numberSign(turn) + printed(reply.move.san, words);
  return `${fill(words.practice.played, { side: words[turn.color], move })} ${wish}`;
}
