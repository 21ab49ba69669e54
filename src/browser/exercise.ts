import { numberSign } from '../chess/letters.ts';
import type { Color } from '../chess/types.ts';
import { dataOf } from '../contract/attributes.ts';
import { fill } from '../contract/sentence.ts';
import type { BoardPicture } from '../draw/picture.ts';
import { type BoardMove, onBoard } from './board/board-state.ts';
import { wordsOf } from './board/board-words.ts';
import { CourseBoard } from './board/course-board.ts';
import type { Glide } from './board/draw-on.ts';
import { makeMoveEntry } from './board/move-entry.ts';
import { readLegal } from './board/read-legal.ts';
import { makeControls, type Talk, talkOf } from './exercise-controls.ts';
import { readSpots, type Spot } from './spots.ts';
import { whenIdle } from './when-idle.ts';
import { describe } from './words.ts';

/** A line of the exercise: its element in the page and its first position and move. */
interface Line {
  readonly kind: 'answer' | 'also' | 'wrong';
  readonly element: HTMLElement;
  readonly start: Spot;
}

/**
 * Makes every exercise of the page live, one after the other: it is answered on its board or by
 * typing. Until then its answer is folded in the text, as without scripts.
 */
export function startExercises(root: ParentNode): void {
  const sections = [...root.querySelectorAll<HTMLElement>('.exercise')];
  makeWay(sections);
  const startNext = () => {
    const section = sections.shift();
    if (section === undefined) return;
    // By then it may be gone from the page.
    if (section.isConnected) startExercise(section);
    whenIdle(startNext);
  };
  whenIdle(startNext);
}

function startExercise(section: HTMLElement): void {
  const data = dataOf('exercise', section);
  const { legal: list = '', p: position = '', last = '' } = data;
  const [placement = ''] = position.split(' ');
  const found = section.querySelector('course-board');
  const fold = section.querySelector<HTMLElement>('.exercise-help > .answer');
  if (!(found instanceof CourseBoard) || fold === null) return;
  const board: CourseBoard = found;
  const words = wordsOf(section, 'chapter');
  const view: Color = data.view === 'black' ? 'black' : 'white';
  const turn: Color = data.turn === 'black' ? 'black' : 'white';
  const legal = readLegal(list);
  const spots = readSpots(section, '.moves');
  const lines = readLines(fold, spots);
  const lastMove = last === '' ? undefined : { from: last.slice(0, 2), to: last.slice(2, 4) };
  /** The move of a line that is shown; absent at the exercise's own position. */
  let current: Spot | undefined;

  const talk: Talk = talkOf(
    lines.map(({ element }) => element),
    words,
  );
  const backToQuestion = () => {
    if (current !== undefined) ask();
  };
  onBoard(board, 'course-board-touch', backToQuestion);
  onBoard(board, 'course-board-move', judge);
  onBoard(board, 'course-board-refuse', ({ piece, from, to }) => {
    const parts = { piece: words.pieces[piece.kind], from, to: to ?? '' };
    reply(to === undefined ? words.notYours[turn] : fill(words.cannotGo, parts), []);
  });
  const entry = makeMoveEntry(words, {
    legal: () => legal,
    onMoves: (moves) => {
      backToQuestion();
      board.make(moves);
    },
    onUnread: (message) => {
      backToQuestion();
      reply(message, []);
    },
  });
  const answering = makeControls(entry, words.exercise.giveUp, () => {
    backToQuestion();
    end(words.exercise.given, answers());
  });

  fold.replaceWith(answering);
  board.after(talk.element);

  function draw(spot: Spot | undefined, glide?: Glide): void {
    const toMove = spot?.move === undefined ? turn : otherSide(spot.move.color);
    const picture: BoardPicture =
      spot === undefined
        ? { placement, lastMove, turn }
        : { ...spot, lastMove: spot.move ?? lastMove, turn: toMove };
    board.show({
      ...picture,
      view,
      glide,
      description: describe(picture.placement, words),
      legal: spot === undefined ? legal : [],
    });
  }

  /** Shows a position of a line; `undefined` is the exercise's own. */
  function show(spot: Spot | undefined, glides: boolean): void {
    const before = current;
    current?.element.removeAttribute('aria-current');
    current = spot;
    if (spot?.move !== undefined) spot.element.setAttribute('aria-current', 'true');
    draw(spot, glides ? glideBetween(before, spot) : undefined);
    talk.setSteps(spot?.parent !== undefined, (spot?.children.length ?? 0) > 0);
  }

  function ask(): void {
    show(undefined, false);
    reply('', []);
    answering.hidden = false;
    section.classList.remove('answered');
  }

  function reply(message: string, shown: readonly Line[]): void {
    const elements = shown.map(({ element }) => element);
    talk.say(message, elements);
  }

  /** The answer is known: what is left is to play it through. */
  function end(message: string, shown: readonly Line[], reached?: Spot): void {
    const hadFocus = answering.contains(document.activeElement);
    answering.hidden = true;
    section.classList.add('answered');
    reply(message, shown);
    show(reached ?? shown[0]?.start, reached !== undefined);
    if (hadFocus) talk.focus();
  }

  const answers = () => lines.filter(({ kind }) => kind === 'answer');

  function judge(move: BoardMove): void {
    entry.clear();
    const named = lines.filter(({ start }) => start.children[0]?.move?.san === move.san);
    const [line] = named;
    const reached = line?.start.children[0];
    if (line === undefined || reached === undefined) {
      const first = lines[0]?.start.children[0]?.move;
      const number = first ? numberSign({ number: first.number, color: turn }) : '';
      draw(undefined);
      reply(fill(words.exercise.legal, { move: number + move.san }), []);
    } else if (line.kind === 'answer') {
      const others = answers().filter((each) => !named.includes(each));
      end(words.exercise.right, [...named, ...others], reached);
    } else {
      reply(words.exercise[line.kind], named);
      show(reached, true);
    }
  }

  function step(spot: Spot | undefined): void {
    if (spot !== undefined) show(spot, true);
  }
  talk.onStep((way) => {
    if (way === 'again') {
      ask();
      board.focusSquares();
    } else step(way === 'back' ? current?.parent : current?.children[0]);
  });
  talk.element.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('.move') : null;
    const spot = link === null ? undefined : spots.get(link);
    if (spot === undefined) return;
    event.preventDefault();
    step(spot);
  });
  talk.element.addEventListener('keydown', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
    event.preventDefault();
    const next = event.key === 'ArrowLeft' ? current?.parent : current?.children[0];
    const hadFocus = document.activeElement?.matches('.move');
    step(next);
    if (hadFocus && next?.move !== undefined) next.element.focus();
  });
  // On paper stands the question.
  addEventListener('beforeprint', () => draw(undefined));
  addEventListener('afterprint', () => draw(current));
  ask();
}

function otherSide(color: Color): Color {
  return color === 'white' ? 'black' : 'white';
}

function readLines(fold: ParentNode, spots: ReadonlyMap<Element, Spot>): Line[] {
  return [...fold.querySelectorAll<HTMLElement>('.moves')].flatMap((element) => {
    const start = spots.get(element);
    const kind = (['answer', 'also', 'wrong'] as const).find((name) =>
      element.classList.contains(`${name}-line`),
    );
    return start === undefined || kind === undefined ? [] : [{ kind, element, start }];
  });
}

function glideBetween(before: Spot | undefined, spot: Spot | undefined): Glide | undefined {
  if (spot?.move !== undefined && (before === undefined || before === spot.parent)) {
    return spot.move;
  }
  return before?.move !== undefined && before.parent === spot
    ? { from: before.move.to, to: before.move.from }
    : undefined;
}

/** While an exercise is in sight, the page's own board gives way to it where it lies above the text. */
function makeWay(sections: readonly HTMLElement[]): void {
  const inSight = new Set<Element>();
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (isIntersecting) inSight.add(target);
        else inSight.delete(target);
      }
      document.documentElement.classList.toggle('at-exercise', inSight.size > 0);
    },
    { threshold: 0.3 },
  );
  for (const section of sections) {
    const board = section.querySelector('course-board');
    if (board !== null) observer.observe(board);
  }
}
