import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { counted } from '../../counted.ts';
import { element, make } from '../../element.ts';
import { inLanguageOf } from '../../in-language-of.ts';
import type { CourseHome } from '../session/practice-course.ts';
import type { Session } from '../session/session.ts';
import { lineText } from './line-text.ts';
import { countOf } from './marks.ts';
import { sayOf } from './sentences.ts';
import type { SessionParts } from './session-parts.ts';
import { showOnBoard } from './show-on-board.ts';
import { fillStrip, markSign } from './strip.ts';

export function renderSession(
  parts: SessionParts,
  session: Session,
  {
    title,
    words,
    moved,
    comment,
  }: {
    readonly title: string | undefined;
    readonly words: PracticeWords;
    /** The last move has just been made, and glides. */
    readonly moved: boolean;
    readonly comment: HTMLElement | undefined;
  },
): void {
  const { practice } = words;
  const { stage, course, start } = session;
  const about = title ?? course.table.chapters[start.chapter]?.title ?? '';
  const home = course.homeOf?.(start.position);
  if (home === undefined) parts.about.textContent = fill(practice.about, { title: about });
  else tellHome(parts, home, about);
  fillStrip(parts.strip, session, words);
  parts.count.textContent = countText(session, words);
  showOnBoard(parts.board, session, words, moved);
  const said = sayOf(session, words);
  const right = said.mark === 'right' ? [markSign('right'), ' '] : [];
  parts.heading.replaceChildren(...right, said.heading);
  parts.before.textContent = said.before === '' ? '' : ` ${said.before} `;
  const wrong = said.mark === 'wrong' ? [markSign('wrong')] : [];
  parts.feedback.className = `practice-verdict ${said.mark ?? ''}`;
  parts.feedback.replaceChildren(...wrong, make('span', '', said.text));
  parts.feedback.hidden = said.text === '';
  parts.line.replaceChildren(...lineText(session, words));
  parts.line.hidden = parts.line.textContent === '';
  parts.comment.replaceChildren(...(comment ? [comment] : []));
  const reading = stage.kind === 'read';
  const form = parts.element.querySelector<HTMLElement>('form');
  if (form !== null) form.hidden = reading;
  for (const aid of parts.aids) aid.hidden = stage.kind !== 'ask';
  parts.onward.hidden = !reading;
  if (!reading) return;
  const { next } = stage;
  parts.on.textContent =
    next === 'on' ? practice.on : next === 'line' ? practice.nextLine : practice.finish;
}

/** Of several courses: the one that asks now, which is said aloud whenever it is another. */
function tellHome(parts: SessionParts, home: CourseHome, chapter: string): void {
  const name = make('b', '', home.shortTitle);
  const words = element('span', inLanguageOf(home), name, `: ${chapter}`);
  parts.about.classList.add('of-course');
  const isOther = parts.about.querySelector('b')?.textContent !== home.shortTitle;
  parts.about.replaceChildren(words);
  parts.home.replaceChildren(
    isOther ? element('span', inLanguageOf(home), `${home.shortTitle}. `) : '',
  );
}

function countText(session: Session, { practice }: PracticeWords): string {
  const { n, all, again, comeBack } = countOf(session);
  const count = fill(again ? practice.countAgain : practice.count, {
    n: String(n),
    all: String(all),
  });
  return comeBack === 0 ? count : `${count} ${counted(practice.comeBack, comeBack)}`;
}
