import { numberSign } from '../../../chess/letters.ts';
import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { adviceAt, type Session, type Turn, turnAfter } from '../session/session.ts';
import { adviceSquares } from './show-on-board.ts';
import { printed } from './words.ts';

/** What the page says at the present stage. */
export interface Said {
  /** What is asked, or what came of it. */
  readonly heading: string;
  /** For who does not see the board: the move that the other side has just made. */
  readonly before: string;
  /** What else is to be said; empty where nothing is. */
  readonly text: string;
  readonly mark?: 'right' | 'wrong' | undefined;
}

export function sayOf(session: Session, words: PracticeWords): Said {
  const { stage } = session;
  if (stage.kind === 'show') return ofShowing(session, words);
  if (stage.kind === 'ask') return ofAsking(session, words);
  return ofReading(session, words);
}

function ofShowing(session: Session, words: PracticeWords): Said {
  const { stage, feedback } = session;
  const { practice } = words;
  const turn = turnAfter(session, session.line.length);
  const move = inWords(turn, adviceAt(session), words);
  const isChanged = stage.kind === 'show' && stage.task.show === 'changed';
  const heading = isChanged ? practice.changedMove : practice.newMove;
  const help = isChanged ? practice.changedMoveHelp : practice.newMoveHelp;
  const wrong = feedback?.kind === 'not-shown';
  return {
    heading: fill(heading, { side: words.practice.sides[turn.color], move }),
    before: replyBefore(session, words),
    text: wrong ? fill(practice.notShown, { move }) : join(ofLast(session, words), help),
    mark: wrong ? 'wrong' : undefined,
  };
}

function ofAsking(session: Session, words: PracticeWords): Said {
  const { stage, feedback } = session;
  const { practice } = words;
  const turn = turnAfter(session, session.line.length);
  const heading = fill(practice.question, { side: practice.sides[turn.color] });
  const before = replyBefore(session, words);
  switch (feedback?.kind) {
    case 'option':
    case 'bad':
    case 'other': {
      const move = inWords(turn, feedback.san, words);
      return {
        heading: feedback.kind === 'option' ? practice.alsoGood : practice.tryAgain,
        before: '',
        text: fill(practice[feedback.kind], { move }),
        mark: feedback.kind === 'option' ? undefined : 'wrong',
      };
    }
    case undefined: {
      if (stage.kind !== 'ask' || !stage.hinted) return { heading, before, text: '' };
      const { kind, from } = adviceSquares(session);
      const hint = fill(practice.hinted, { piece: words.pieces[kind], square: from });
      return { heading, before: '', text: hint };
    }
    default:
      return { heading, before, text: ofLast(session, words) };
  }
}

/** Of the move that was found just before, where the line went on at once. */
function ofLast(session: Session, words: PracticeWords): string {
  const { feedback, line } = session;
  if (feedback?.kind === 'shown') return words.practice.shown;
  if (feedback?.kind !== 'right') return '';
  const at = line.findLastIndex(({ found, move }) => found && move.san === feedback.san);
  const move =
    at < 0 ? printed(feedback.san, words) : inWords(turnAfter(session, at), feedback.san, words);
  return fill(words.practice.wasRight, { move });
}

function ofReading(session: Session, words: PracticeWords): Said {
  const { feedback, line } = session;
  const { practice } = words;
  const move = inWords(turnAfter(session, line.length - 1), feedback?.san ?? '', words);
  const isGiven = feedback?.kind === 'given';
  return {
    heading: fill(isGiven ? practice.given : practice.right, { move }),
    before: '',
    text: isGiven ? practice.givenHelp : feedback?.kind === 'shown' ? practice.shown : '',
    mark: isGiven ? undefined : 'right',
  };
}

function replyBefore(session: Session, words: PracticeWords): string {
  const reply = session.line.at(-1);
  if (reply === undefined || reply.found) return '';
  const turn = turnAfter(session, session.line.length - 1);
  const move = inWords(turn, reply.move.san, words);
  return fill(words.practice.played, { side: words.practice.sides[turn.color], move });
}

/** `7...Be7` */
export function inWords(turn: Turn, san: string, words: PracticeWords): string {
  return numberSign(turn) + printed(san, words);
}

function join(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(' ');
}
