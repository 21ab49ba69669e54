import type { Strings } from '../../strings/index.ts';

/** A claim in a reader's words; as written, if no catalogue has words for it. */
export type ClaimWords = { readonly words: string } | { readonly written: string };

/** The claims that `and` joins, each in a reader's words. */
export function claimWords(claim: string, strings: Strings): ClaimWords[] {
  return claim
    .trim()
    .split(/\s+and\s+/)
    .map((part) => {
      const words = wordsOf(part, strings);
      return words === undefined ? { written: part } : { words };
    });
}

function wordsOf(part: string, strings: Strings): string | undefined {
  const all = part.split(/\s+/);
  const isDenied = all[0] === 'not';
  const [name = '', ...args] = isDenied ? all.slice(1) : all;
  const known = Object.entries(strings.claims).find(([kind]) => kind === name)?.[1];
  // `or`, `after Nf3:` and the like say more than the claim's name.
  if (known === undefined || !args.every((word) => plain.test(word))) return undefined;
  const shown = args.map((word) => sideIn(word, strings));
  const gaps = new Map([...shown.entries()].map(([index, word]) => [String(index), word]));
  gaps.set('rest', listed(shown.slice(1), strings));
  const sentence = isDenied ? known.denied : known.holds;
  const used: readonly string[] = sentence.match(/\{\w+\}/g) ?? [];
  const takes = used.includes('{rest}') ? args.length > 1 : used.length === args.length;
  if (!takes) return undefined;
  return sentence.replace(/\{(\w+)\}/g, (_, gap: string) => gaps.get(gap) ?? '');
}

/** A square, a file, two squares with a hyphen, a side. */
const plain = /^(?:[a-h][1-8]|[a-h]|[a-h][1-8]-[a-h][1-8]|white|black)$/;

function sideIn(word: string, strings: Strings): string {
  if (word === 'white' || word === 'black') return strings[word];
  return word;
}

function listed(words: readonly string[], { and }: Strings): string {
  const [last, ...others] = words.toReversed();
  if (last === undefined || others.length === 0) return last ?? '';
  return `${others.toReversed().join(', ')} ${and} ${last}`;
}
