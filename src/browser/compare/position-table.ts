import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import type { PositionRow } from '../../lookup/games/by-position.ts';
import { make, makeButton } from '../element.ts';
import type { Speech } from './compare-words.ts';
import type { Places } from './places.ts';

/** Positions shown at first, and added at a time. */
const few = 8;
const more = 24;
/** Played moves that are named. */
const mostMoves = 4;

export interface TableContext {
  readonly table: CourseTable;
  readonly speech: Speech;
  readonly places: Places;
  readonly inChapter?: boolean;
  readonly onGames: (row: PositionRow) => void;
}

/** Positions where games left the course: a row each, the most frequent first. */
export function makePositionTable(
  rows: readonly PositionRow[],
  context: TableContext,
  label: string,
): HTMLElement {
  const { speech, table } = context;
  const { words } = speech;
  const hasMoves = rows.some(({ moves }) => moves.length > 0);
  const side = table.side === 'black' ? 'black' : 'white';
  const heads = [
    words.position,
    words.count,
    ...(hasMoves ? [words.advice] : []),
    words.played,
    fill(words.score, { side: speech.side(side) }),
  ];
  const head = make(
    'tr',
    '',
    heads.map((text) => {
      const cell = make('th', '', text);
      cell.scope = 'col';
      return role(cell, 'columnheader');
    }),
  );
  const body = role(make('tbody', ''), 'rowgroup');
  const element = role(
    make('table', 'positions-left', [role(make('thead', '', role(head, 'row')), 'rowgroup'), body]),
    'table',
  );
  element.setAttribute('aria-label', label);
  const next = makeButton('', () => show(more));
  let shown = 0;
  function show(count: number): void {
    const fresh = rows.slice(shown, shown + count);
    body.append(...fresh.map((row) => makeRow(row, context, heads)));
    shown += fresh.length;
    const rest = rows.length - shown;
    next.hidden = rest === 0;
    next.textContent = speech.counted(words.morePositions, Math.min(rest, more));
  }
  show(few);
  return make('div', 'positions-left-frame', [element, next]);
}

function makeRow(row: PositionRow, context: TableContext, heads: readonly string[]): HTMLElement {
  const { speech, places, table, onGames } = context;
  const { words } = speech;
  const tr = role(make('tr', ''), 'row');
  const { exit } = row;
  const board = make('div', 'small-board');
  board.innerHTML = drawBoardInPage({
    placement: table.positions[row.position]?.key ?? '',
    view: table.side === 'black' ? 'black' : 'white',
    coordinates: false,
  });
  const line = places.line(row.position);
  // A single move has been named already.
  const way = line.includes(' ') ? [make('span', 'line', line)] : [];
  const name = make('div', '', [
    context.inChapter ? places.positionHere(exit) : places.position(exit),
    ...way,
  ]);
  const position = make('th', '', make('div', 'position-left', [board, name]));
  position.scope = 'row';

  const games = makeButton(speech.counted(words.showGames, row.games.length), () => onGames(row));
  const advice = row.moves.flatMap((move, index) => [
    ...(index === 0 ? [] : [', ']),
    places.move(exit, move),
  ]);
  const played = row.played
    .slice(0, mostMoves)
    .map(({ san, games }) =>
      make('li', '', [
        places.there(exit, san),
        ' ',
        make('span', 'times', `× ${speech.figure(games)}`),
      ]),
    );
  const rest = row.played.length - played.length;
  if (rest > 0) played.push(make('li', 'rest', speech.counted(words.moreMoves, rest)));
  const cells = [
    make('td', 'number', games),
    ...(heads.length === 5 ? [make('td', '', advice)] : []),
    make('td', '', make('ul', '', played)),
    make('td', 'number', scoreOf(row, speech)),
  ];
  for (const [index, cell] of cells.entries()) {
    // On a phone the cells stand below each other, each with its heading.
    cell.dataset.label = heads[index + 1] ?? '';
    role(cell, 'cell');
  }
  tr.append(role(position, 'rowheader'), ...cells);
  return tr;
}

function scoreOf({ score }: PositionRow, { words, figure }: Speech): HTMLElement | string {
  const { won, drawn, lost } = score;
  if (won + drawn + lost === 0) return '–';
  const text = `+${figure(won)} =${figure(drawn)} −${figure(lost)}`;
  const spoken = fill(words.scoreInWords, {
    won: figure(won),
    drawn: figure(drawn),
    lost: figure(lost),
  });
  const seen = make('span', '', text);
  seen.setAttribute('aria-hidden', 'true');
  return make('span', 'score', [seen, make('span', 'unseen', spoken)]);
}

/** The style sheet lays tables out as blocks on phones, which would take their roles away. */
function role<Kind extends HTMLElement>(element: Kind, name: string): Kind {
  element.setAttribute('role', name);
  return element;
}
