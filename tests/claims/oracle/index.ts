import type { Chess } from 'chessops/chess';
import { gameClaims } from './game.ts';
import { pawnClaims } from './pawns.ts';
import { pieceClaims } from './pieces.ts';
import { other, played, readMove, type Truth, type World, withMove } from './world.ts';

export { movesOf, sanOf, type Truth, type World } from './world.ts';

const kinds = { ...pawnClaims, ...pieceClaims, ...gameClaims };

/** The names of the claims that the oracle knows. */
export const oracleKinds: ReadonlySet<string> = new Set([...Object.keys(kinds), 'mate in']);

/** The truth of one claim without its `not`. */
export function truthOf(claim: string, world: World): Truth {
  const [name = '', ...words] = claim.split(' ');
  const judge = kinds[name];
  if (!judge) throw new Error(`the oracle knows no claim ${name}`);
  return judge(world, words);
}

/** Whether a whole claim is true, with `or`, `and`, `not` and `after`. */
export function isTrue(claim: string, world: World): boolean {
  let there: World | undefined = world;
  let whole = false;
  for (const alternative of claim.split(' or ')) {
    let all = true;
    for (const part of alternative.split(' and ')) {
      const [, moves, rest = ''] = /^(?:after ([^:]*): )?(.*)$/.exec(part) ?? [];
      if (moves !== undefined) there = reach(world, moves.split(' '));
      const denied = rest.startsWith('not ');
      const truth = there ? truthOf(denied ? rest.slice(4) : rest, there) : 'empty';
      if (truth !== !denied) all = false;
    }
    whole ||= all;
  }
  return whole;
}

/** The world after some moves; undefined where one cannot be played. */
function reach(world: World, moves: readonly string[]): World | undefined {
  let { chess, before }: { chess: Chess; before?: Chess | undefined } = world;
  const castled = [...world.castled];
  for (const text of moves) {
    if (text === 'pass') {
      if (chess.isCheck()) return undefined;
      [chess, before] = [withMove(chess, other(chess.turn)), undefined];
      continue;
    }
    const move = readMove(chess, text);
    if (!move) return undefined;
    if (text.startsWith('O-O')) castled.push(chess.turn);
    [chess, before] = [played(chess, move), chess];
  }
  return { ...world, chess, before, castled, covered: 0 };
}
