import type { Random } from '../random.ts';
import { courseMutations } from './mutations-of-courses.ts';
import { fragments, oddCharacters } from './words.ts';

export interface Mutable {
  readonly text: string;
  /** The texts of all files, to take parts from. */
  readonly others: readonly string[];
  readonly random: Random;
}

export type Mutation = (mutable: Mutable) => string;

const splitLines = (text: string) => text.split(/(?<=\n)/);
/** Words, spaces and signs, none of them lost. */
const splitTokens = (text: string) => text.match(/[\p{L}\p{N}_-]+|\s+|[^\p{L}\p{N}_\s-]/gu) ?? [];

/** Puts what `change` makes of some neighbouring parts in their place. */
function changeSome(
  split: (text: string) => readonly string[],
  most: number,
  change: (some: readonly string[], mutable: Mutable) => readonly string[],
): Mutation {
  return (mutable) => {
    const parts = split(mutable.text);
    const start = mutable.random.below(parts.length + 1);
    const end = start + 1 + mutable.random.below(most);
    const changed = change(parts.slice(start, end), mutable);
    return [...parts.slice(0, start), ...changed, ...parts.slice(end)].join('');
  };
}

function someOf(parts: readonly string[], most: number, random: Random): readonly string[] {
  const start = random.below(Math.max(1, parts.length));
  return parts.slice(start, start + 1 + random.below(most));
}

const insertAt = (text: string, at: number, added: string) =>
  text.slice(0, at) + added + text.slice(at);

const general: readonly Mutation[] = [
  changeSome(splitLines, 4, () => []),
  changeSome(splitLines, 4, (lines) => [...lines, ...lines]),
  changeSome(splitLines, 3, (lines) => [...lines].reverse()),
  changeSome(splitLines, 2, (lines) => lines.map((line) => line.replace(/\n$/, ''))),
  changeSome(splitLines, 3, (lines, { random }) => {
    const indent = random.pick(['  ', '    ', '\t', '> ', '- ', '1. ', '# ', '| ', '   ']);
    return lines.map((line) => indent + line);
  }),
  changeSome(splitLines, 1, (_, { others, random }) =>
    someOf(splitLines(random.pick(others)), 8, random),
  ),
  changeSome(splitTokens, 3, () => []),
  changeSome(splitTokens, 3, (tokens) => [...tokens, ...tokens]),
  changeSome(splitTokens, 3, (tokens) => [...tokens].reverse()),
  changeSome(splitTokens, 1, (_, { others, random }) =>
    someOf(splitTokens(random.pick(others)), 3, random),
  ),
  ({ text, random }) => text.slice(0, random.below(text.length + 1)),
  ({ text, random }) => text.slice(random.below(text.length + 1)),
  ({ text, random }) => insertAt(text, random.below(text.length + 1), random.pick(oddCharacters)),
  ({ text, random }) => {
    const added = random.pick(random.pick(fragments));
    return insertAt(text, random.below(text.length + 1), added);
  },
  // On a line of its own, where blocks can begin.
  ({ text, random }) => {
    const lines = splitLines(text);
    const added = `\n${random.pick(random.pick(fragments))}\n\n`;
    const at = random.below(lines.length + 1);
    return [...lines.slice(0, at), added, ...lines.slice(at)].join('');
  },
  ({ text, random }) => {
    const end = random.pick(['\r\n', '\r']);
    return text.replace(/\n/g, (line) => (random.chance(0.5) ? end : line));
  },
  ({ text, random }) => text.replaceAll('\n', random.pick(['\r\n', '\r'])),
  ({ text }) => text.trimEnd(),
];

export const mutations: readonly Mutation[] = [...general, ...courseMutations];
