import { nameMoves } from '../chess/index.ts';
import type { PlainTag } from '../movetext/index.ts';
import type { DraftGame } from './types.ts';

/** At so many characters a name is cut. */
const longest = 90;

/** A game's own name, from what its tags tell, else its first moves. */
export function nameGame({ tags, line }: DraftGame): string {
  const tag = (name: string) => known(tags, name);
  const [chapter, white, black, opening] = ['Chapter', 'White', 'Black', 'Opening'].map(tag);
  const variation = [opening, tag('Variation'), tag('SubVariation')].filter((part) => part !== '');
  const date = /^\d{4}/.exec(tag('Date'))?.[0];
  if (chapter) return cutName(chapter);
  if (white || black) {
    const names = `${white || 'N.N.'} – ${black || 'N.N.'}`;
    return cutName(date === undefined ? names : `${names}, ${date}`);
  }
  if (variation.length > 0) return cutName(variation.join(', '));
  return cutName(nameMoves(line.moves.slice(0, 6)) || tag('Event') || 'A game');
}

/** A line of moves that may be long, as `nameMoves` gives it: what tells it from others stands at its end. */
export function nameLine(moves: Parameters<typeof nameMoves>[0]): string {
  const name = nameMoves(moves);
  return name.length <= longest ? name : `… ${nameMoves(moves.slice(-8))}`;
}

/** The value of a tag; empty where it is missing or only says that nobody knows. */
export function known(tags: readonly PlainTag[], name: string): string {
  const value =
    tags
      .find((tag) => tag.name === name)
      ?.value.replace(/\s+/g, ' ')
      .trim() ?? '';
  return /^[?.\-*]*$/.test(value) ? '' : value;
}

/** A name of a length that lists, tabs and cards can show. */
export function cutName(name: string): string {
  const signs = [...name];
  return signs.length <= longest
    ? name
    : `${signs
        .slice(0, longest - 1)
        .join('')
        .trim()}…`;
}
