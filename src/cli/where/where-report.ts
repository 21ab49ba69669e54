import { printable } from '../../diagnostics/index.ts';
import type { Difference } from '../../lookup/search/index.ts';
import { count } from '../console.ts';
import type { Whereabouts, WherePlace } from './whereabouts.ts';

/** What `linewright where` answers, as its JSON has it. */
export interface WhereResult {
  /** The position that was asked for, or all that have the pieces which were given; none where the course has none. */
  readonly found: readonly Whereabouts[];
  /** Positions with the same pieces that are another position by the Laws (FIDE, 9.2). */
  readonly alike: readonly (Whereabouts & { readonly differs: readonly Difference[] })[];
  /** Positions that differ on few squares. */
  readonly nearest: readonly (Whereabouts & { readonly squares: number })[];
  /** How far the course has the moves. */
  readonly known?: Whereabouts & {
    readonly plies: number;
    /** The move that was given then: `6.h3`. */
    readonly next?: string | undefined;
  };
  /** The first move that cannot be played. */
  readonly stopped?: { readonly move: string; readonly reason: string };
}

const differences: Readonly<Record<Difference, string>> = {
  turn: 'the side to move',
  castling: 'the rights to castle',
  'en-passant': 'the right to take en passant',
};

/** The answer as a person reads it in a terminal. */
export function reportWhere({ found, alike, nearest, known, stopped }: WhereResult): string {
  const parts: string[] = [];
  if (stopped) parts.push(line(`${stopped.move} cannot be played: ${stopped.reason}.`));
  if (found.length === 0) parts.push(line('The course does not have this position.'));
  if (found.length > 1)
    parts.push(line(`The course has ${count(found.length, 'position')} with these pieces.`));
  parts.push(...found.map((each) => whereText(each)));
  if (known) {
    const then = known.next === undefined ? '' : `; it does not have ${known.next}`;
    const far =
      known.plies === 0
        ? 'The course has where the moves start'
        : `The course has the first ${count(known.plies, 'move')}`;
    parts.push(line(`${far}${then}:`) + whereText(known));
  }
  for (const each of alike) {
    const what = each.differs.map((difference) => differences[difference]).join(' and ');
    parts.push(line(`The same pieces; ${what} differs:`) + whereText(each));
  }
  for (const each of nearest) {
    const [place] = each.places;
    if (place === undefined) continue;
    const what = `Near it, with ${count(each.squares, 'square')} changed:`;
    parts.push([line(what), ...placeText(place)].join(''));
  }
  return parts.join('\n');
}

function whereText({ places, moves, ends, ways, moreWays }: Whereabouts): string {
  const of = (...kinds: readonly string[]) =>
    moves.flatMap(({ kind, name }) => (kinds.includes(kind) ? [name] : []));
  const said = [
    ['advises', of('advice')],
    ['mentions', of('option')],
    ['calls bad', of('bad')],
    ['covers', of('reply')],
  ] as const;
  const led = places.filter(({ after }) => after !== undefined);
  const starts = places.filter(({ after }) => after === undefined);
  const shown = led.length > 0 ? led : starts.slice(0, 1);
  const more = places.length - shown.length;
  return [
    ...shown.flatMap(placeText),
    ...(more > 0 ? [line(`  and ${count(more, 'block')} from there on`)] : []),
    ...said.flatMap(([verb, names]) =>
      names.length === 0 ? [] : [line(`  the course ${verb} ${names.join(', ')}`)],
    ),
    ...(ends === undefined ? [] : [line(`  a line ends here on purpose: ${ends}`)]),
    ...ways.map((way) => line(`  by ${way}`)),
    ...(moreWays ? [line('  and by other ways')] : []),
  ].join('');
}

function placeText(place: WherePlace): string[] {
  const { file, line: row, column, block, after, names, draft, address } = place;
  const what = [
    after === undefined ? 'at its start' : `after ${after}`,
    block === 'moves' ? '' : `in ${block === 'exercise' ? 'an' : 'a'} ${block}`,
    names.length === 0 ? '' : `named ${names.join(', ')}`,
    draft ? 'draft' : '',
  ].filter((part) => part !== '');
  return [line(`${file}:${row}:${column}  ${what.join(', ')}`), line(`  ${address}`)];
}

function line(text: string): string {
  return `${printable(text)}\n`;
}
