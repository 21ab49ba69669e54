import {
  freePlayFailed,
  freePlayLoader,
  freePlayReady,
  ownPrefix,
} from '../../contract/free-play.ts';
import type { ChapterWords } from '../../contract/words.ts';
import { onBoard } from '../board/board-state.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { element, make } from '../element.ts';
import type { Spot } from '../spots.ts';
import { whenIdle } from '../when-idle.ts';
import { hasLineFor } from './line-to-show.ts';

export interface FreeText {
  readonly board: CourseBoard;
  readonly article: HTMLElement;
  readonly spots: ReadonlyMap<Element, Spot>;
  readonly words: ChapterWords;
  /** What the text has, or had last, on the board. */
  readonly shown: () => Spot;
  /** Goes to a position of the text as by a step. */
  readonly go: (spot: Spot) => void;
}

interface Point {
  readonly clientX: number;
  readonly clientY: number;
}

/** A pointer went down on the board, or on a diagram of the text, and was let go. */
export interface Gesture {
  readonly diagram?: Element | undefined;
  readonly from: Point;
  readonly to: Point;
}

/** What was done before there was anything to do it with. */
export interface EarlyActs {
  readonly gestures: readonly Gesture[];
  readonly tools: boolean;
}

/** Makes the board free to play on. @returns what performs a gesture that had begun before. */
export type StartFree = (text: FreeText, early: EarlyActs) => (gesture: Gesture) => void;

/**
 * Loads what plays freely (`main.ts`) when the reader reaches for the board, asks for it, or has kept
 * something of his own. What he does until it is there is done then.
 */
export function offerFreePlay(text: FreeText): void {
  const { article, board, words } = text;
  const stand = board.querySelector<HTMLElement>('.board-stand') ?? board;
  const gestures: Gesture[] = [];
  const waiting = new AbortController();
  const { signal } = waiting;
  let perform = (gesture: Gesture): void => void gestures.push(gesture);
  let tools = false;
  let isAsked = false;

  function load(): void {
    if (isAsked) return;
    isAsked = true;
    const script = element('script', { src: freePlayLoader });
    script.addEventListener('error', () => dispatchEvent(new Event(freePlayFailed)));
    document.head.append(script);
  }
  addEventListener(
    freePlayReady,
    (ready) => {
      waiting.abort();
      board.querySelector('.own-failed')?.remove();
      perform = (ready as CustomEvent<StartFree>).detail(text, { gestures, tools });
    },
    { once: true },
  );
  addEventListener(freePlayFailed, () => {
    isAsked = false;
    board.querySelector('.own-failed')?.remove();
    const told = make('p', 'own-failed', words.ownFailed);
    told.setAttribute('role', 'status');
    board.append(told);
  });
  onBoard(board, 'course-board-own', () => {
    tools = true;
    load();
  });
  stand.addEventListener('pointerover', (over) => over.pointerType === 'mouse' && load(), {
    signal,
  });
  const follow = (from: PointerEvent, diagram?: Element) => {
    load();
    if (!from.isPrimary || from.button !== 0) return;
    const end = new AbortController();
    const over = { signal: end.signal };
    addEventListener(
      'pointerup',
      (to) => {
        end.abort();
        perform({ from, to, diagram });
      },
      over,
    );
    addEventListener('pointercancel', () => end.abort(), over);
  };
  stand.addEventListener(
    'pointerdown',
    (from) => {
      // A finger on a piece is no swipe.
      if (from.target instanceof Element && from.target.closest('[data-square]')) {
        from.stopPropagation();
      }
      follow(from);
    },
    { capture: true, signal },
  );
  // A diagram is played on as the board beside it is, which shows what comes of it.
  article.addEventListener('pointerdown', (from) => {
    const diagram = diagramOf(from);
    if (diagram !== null) follow(from, diagram);
  });
  for (const kind of ['click', 'dragstart'] as const) {
    article.addEventListener(
      kind,
      (event) => {
        // By the keys it stays the link that it may be.
        if (diagramOf(event) === null || (event.detail === 0 && kind === 'click')) return;
        event.preventDefault();
        event.stopPropagation();
      },
      true,
    );
  }
  if (hasLineFor(location.href)) load();
  else if (hasOwn()) whenIdle(load);
}

/** The diagram whose board an event is for; what is dragged is the link that may hold that. */
function diagramOf({ target }: Event): Element | null {
  const drawing = target instanceof Element ? target.closest('svg.board, .still') : null;
  return drawing?.closest('.diagram[data-p]') ?? null;
}

/** Whether anything was kept for the reader, of whichever course. */
function hasOwn(): boolean {
  try {
    return Object.keys(localStorage).some((name) => name.startsWith(ownPrefix));
  } catch {
    return false;
  }
}
