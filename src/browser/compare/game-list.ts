import type { CourseTable, TableMove } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import { moveOf } from '../../lookup/find.ts';
import type { MetGame } from '../../lookup/games/by-position.ts';
import { partingOf } from '../../lookup/games/parting-of.ts';
import type { ComparedGame, GameExit, GameFault } from '../../lookup/games/types.ts';
import { make, makeButton } from '../element.ts';
import type { Speech } from './compare-words.ts';
import { compose } from './compose.ts';
import type { Places } from './places.ts';

/** Games shown at first, and added at a time. */
const few = 20;
const more = 100;

export interface GameListContext {
  readonly table: CourseTable;
  readonly speech: Speech;
  readonly places: Places;
}

/** Games one by one: who played, and where and how the game left the course. */
export function makeGameList(
  games: readonly ComparedGame[],
  context: GameListContext,
): HTMLElement {
  const { speech } = context;
  const list = make('ol', 'games-compared');
  const next = makeButton('', () => show(more));
  let shown = 0;
  function show(count: number): void {
    const fresh = games.slice(shown, shown + count);
    list.append(
      ...fresh.map((game) => make('li', '', [headOf(game, speech), sentenceOf(game, context)])),
    );
    shown += fresh.length;
    const rest = games.length - shown;
    next.hidden = rest === 0;
    next.textContent = speech.counted(speech.words.moreGames, Math.min(rest, more));
  }
  show(few);
  return make('div', '', [list, next]);
}

/** `Game 12: Whitlow – Aldous 0-1, Club Championship 2025.02.06`. */
export function headOf(game: ComparedGame, { words, figure }: Speech): HTMLElement {
  const { number, white, black, result, event, date } = game;
  const isGiven = (part: string) => part !== '';
  const players = white || black ? `${white || words.someone} – ${black || words.someone}` : '';
  const ending = result === '*' ? '' : result.replaceAll('1/2', '½').replace('-', '–');
  const who = [players, ending].filter(isGiven).join(' ');
  const where = [event, date].filter(isGiven).join(' ');
  const rest = [who, where].filter(isGiven).join(', ');
  return make('p', 'game-head', [
    make('span', 'game-number', fill(words.game, { n: figure(number) })),
    rest === '' ? '' : ` ${rest}`,
  ]);
}

export function sentenceOf(game: ComparedGame, context: GameListContext): HTMLElement {
  const { words } = context.speech;
  switch (game.kind) {
    case 'met':
      return make('p', '', [...metSentence(game, context), ...asideSentence(game, context)]);
    case 'apart':
      return make('p', '', words.gameLeaves.never);
    case 'empty':
      return make('p', '', words.empty);
    case 'variant':
      return make('p', '', fill(words.variant, { text: game.variant }));
    case 'broken':
      return make('p', '', faultSentence(game.fault, context));
  }
}

function metSentence({ exit }: MetGame, context: GameListContext): (Node | string)[] {
  const { table, speech, places } = context;
  const { words } = speech;
  const { leaving, by, moves } = partingOf(table, exit);
  const links = linksTo(moves, exit, context);
  return compose(words.gameLeaves[leaving], {
    side: by === undefined ? '' : speech.side(by),
    after: places.position(exit),
    advice: links,
    moves: links,
    played: exit.next === undefined ? '' : places.numbered(exit.next),
  });
}

/** A game may go on in the course after a move that its side is not advised to play. */
function asideSentence({ aside }: MetGame, context: GameListContext): (Node | string)[] {
  const { table, speech, places } = context;
  const here = aside && table.positions[aside.position];
  if (aside === undefined || here === undefined) return [];
  const kind = moveOf(here, aside.next.san)?.kind === 'bad' ? 'bad' : 'option';
  const parts = {
    after: places.position(aside),
    played: places.numbered(aside.next),
    advice: linksTo(partingOf(table, aside).moves, aside, context),
  };
  return [' ', ...compose(speech.words.asideMove[kind], parts)];
}

function linksTo(
  moves: readonly TableMove[],
  exit: GameExit,
  { speech, places }: GameListContext,
): (Node | string)[] {
  return moves.flatMap((move, index): (Node | string)[] => {
    const joint = index === 0 ? '' : index === moves.length - 1 ? ` ${speech.words.and} ` : ', ';
    return [...(joint === '' ? [] : [joint]), places.move(exit, move)];
  });
}

function faultSentence(
  { kind, written, at, reason }: GameFault,
  { speech: { words } }: GameListContext,
): string {
  const sentence = fill(words.faults[kind], {
    move: `${at}${written}`,
    text: written,
    at: at.replace(/\.+$/, ''),
  });
  // The reasons are told in English only.
  return reason === '' || !document.documentElement.lang.startsWith('en')
    ? sentence
    : `${sentence.replace(/\.$/, '')}: ${reason}.`;
}
