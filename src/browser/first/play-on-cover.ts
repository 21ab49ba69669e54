import { sanIn } from '../../chess/letters.ts';
import type { LegalMove } from '../../chess/rules.ts';
import type { Square } from '../../chess/types.ts';
import { dataOf } from '../../contract/attributes.ts';
import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import { moveOf, positionOf } from '../../lookup/find.ts';
import { moveText } from '../../lookup/line-text.ts';
import { pathsOf } from '../../lookup/paths.ts';
import { placeHref } from '../../lookup/place-href.ts';
import { onBoard } from '../board/board-state.ts';
import { wordsOf } from '../board/board-words.ts';
import type { CourseBoard } from '../board/course-board.ts';
import { describe } from '../words.ts';

/** Where the reader is: in a position of the table, after a move. */
interface Spot {
  readonly position: number;
  readonly last?: { readonly from: Square; readonly to: Square } | undefined;
  /** Of the position of the cover the page itself says where it stands. */
  readonly move?: { readonly text: string; readonly href: string } | undefined;
}

/** Makes the board of the cover live: it plays on through the moves that the course has. */
export function playOnCover(
  figure: HTMLElement,
  table: CourseTable,
  movesIn: (key: string) => readonly LegalMove[],
): void {
  const board = figure.querySelector<CourseBoard>('course-board');
  const said = figure.querySelector('.key-words');
  const link = figure.querySelector('a');
  const { key = '', view, last = '' } = dataOf('cover', figure);
  const position = positionOf(table, key);
  if (board === null || said === null || link === null || position === undefined) return;
  const words = wordsOf(figure, 'first');
  const paths = pathsOf(table);
  const first = {
    said: [...said.childNodes],
    see: link.textContent,
    href: link.getAttribute('href'),
  };
  const way: Spot[] = [{ position, last: squaresOf(last) }];
  const here = () => way.at(-1) ?? { position };
  const keyOf = (spot: Spot) => table.positions[spot.position]?.key ?? '';
  const knownIn = (spot: Spot) => table.positions[spot.position]?.moves ?? [];
  const legalIn = (spot: Spot) => movesIn(keyOf(spot));
  const named = (spot: Spot, move: TableMove) =>
    moveText(paths.step(spot.position, move), words.letters);

  function show(glide?: { readonly from: Square; readonly to: Square }): void {
    const spot = here();
    const known = knownIn(spot);
    const [placement = '', turn] = keyOf(spot).split(' ');
    const isAtStart = spot.move === undefined;
    board?.show({
      placement,
      view: view === 'black' ? 'black' : 'white',
      turn: turn === 'b' ? 'black' : 'white',
      description: describe(placement, words),
      lastMove: spot.last,
      legal: legalIn(spot).map(({ san, ...squares }) => ({
        ...squares,
        san: sanIn(words.letters, san),
      })),
      choices: known.map((move) => named(spot, move)),
      canGoBack: !isAtStart,
      canGoOn: known.length > 0,
      glide,
    });
    say(isAtStart ? words.first.play : known.length === 0 ? words.first.end : '', spot);
  }

  /** What stands below the board: after which move, a word on it, and where the course has it. */
  function say(text: string, { move }: Spot): void {
    const after = move && fill(words.first.position, { after: `${words.after} ${move.text}` });
    said?.replaceChildren(...(after === undefined ? first.said : [after]), ` ${text}`);
    if (link === null) return;
    link.textContent = move === undefined ? first.see : words.first.shown;
    link.setAttribute('href', move?.href ?? first.href ?? '');
  }

  function play(move: TableMove | undefined): void {
    if (move === undefined) return;
    const spot = here();
    const squares = legalIn(spot).find(({ san }) => san === move.san);
    const [place] = move.at;
    if (squares === undefined) return;
    const href = place === undefined ? '' : placeHref(table, move.to, place);
    way.push({ position: move.to, last: squares, move: { text: named(spot, move), href } });
    show(squares);
    board?.say(said?.textContent ?? '');
  }

  onBoard(board, 'course-board-wish', (wish) => {
    if (wish.go === 'choice') return play(knownIn(here())[wish.choice]);
    if (wish.go === 'on') return play(knownIn(here())[0]);
    if (way.length === 1) return;
    const { last: undone } = way.pop() ?? {};
    show(undone && { from: undone.to, to: undone.from });
    board.say(said.textContent ?? '');
  });
  onBoard(board, 'course-board-move', ({ san, from, to, promotion }) => {
    const spot = here();
    const made = legalIn(spot).find(
      (move) => move.from === from && move.to === to && move.promotion === promotion,
    );
    const entry = table.positions[spot.position];
    const known = made && entry && moveOf(entry, made.san);
    if (known !== undefined) return play(known);
    show();
    const missing = fill(words.first.notHere, { move: san });
    say(missing, spot);
    board.say(missing);
  });
  show();
}

function squaresOf(move: string): Spot['last'] {
  return move === '' ? undefined : { from: move.slice(0, 2), to: move.slice(2, 4) };
}
