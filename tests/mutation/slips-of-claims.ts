import { type FaultKind, matches, replace } from './faults.ts';

/** Claims that name the one number which is true. */
const counted =
  /\b(material|islands|development|tempi|space|shield|replies)((?: white| black)? )([+-]?\d+)/g;

const otherSide: Readonly<Record<string, string>> = { white: 'black', black: 'white' };

export const slipsOfClaims: readonly FaultKind[] = [
  {
    name: 'a claim with another number',
    rules: ['claim-false'],
    *plant(course) {
      for (const { match, place } of matches(course, counted)) {
        const [whole, name, between, number = ''] = match;
        if (!isInClaim(match)) continue;
        const next = Number(number) + 1;
        const sign = number.startsWith('+') || (name === 'material' && next > 0) ? '+' : '';
        const text = `${name}${between}${sign}${next}`;
        yield replace(course, place, text, `${whole} -> ${text}`, true);
      }
    },
  },
  {
    name: 'a claim of the other side',
    rules: ['claim-false'],
    limit: 'what is true of one side may be true of the other too',
    *plant(course) {
      for (const { match, place } of matches(course, /\b(white|black)\b/g)) {
        if (!isInClaim(match)) continue;
        const side = otherSide[match[0]] ?? '';
        yield replace(course, place, side, `${match[0]} -> ${side}`, false);
      }
    },
  },
  {
    name: 'a slip in the name of a claim',
    rules: ['claim-unreadable'],
    *plant(course) {
      for (const { match, place } of matches(course, /:claim\[(not )?([a-z]{3})([a-z]+)/g)) {
        const [, not = '', start = '', end = ''] = match;
        if (start + end === 'after') continue;
        const text = `:claim[${not}${start}${end.slice(1)}`;
        yield replace(course, place, text, `${match[0]} -> ${text}`, true);
      }
    },
  },
];

/** Whether a match stands between the brackets of a claim. */
function isInClaim({ input, index }: RegExpExecArray): boolean {
  const before = input.slice(0, index);
  const open = before.lastIndexOf(':claim[');
  return open >= 0 && !before.slice(open).includes(']');
}
