/** Changes that know the course language: fences, directives, names, moves, numbers, nesting. */
import type { Random } from '../random.ts';
import type { Mutable, Mutation } from './mutations.ts';
import { claims, labels, moveWords, squares } from './words.ts';

/** Replaces one place, or a few, where a pattern stands. */
function replaceSome(
  pattern: RegExp,
  replacement: (match: readonly string[], mutable: Mutable) => string,
): Mutation {
  return (mutable) => {
    const { text, random } = mutable;
    const all = [...text.matchAll(pattern)];
    if (all.length === 0) return text;
    const chosen = new Set(
      Array.from({ length: 1 + random.below(3) }, () => random.pick(all).index),
    );
    return text.replace(pattern, (...match) => {
      const index = match.find((part) => typeof part === 'number');
      return index !== undefined && chosen.has(index)
        ? replacement(match.map(String), mutable)
        : match[0];
    });
  };
}

const other = (pattern: RegExp, { others, random }: Mutable, group: number, else_: string) => {
  const found = [...random.pick(others).matchAll(pattern)].map((match) => match[group] ?? '');
  return found.length > 0 ? random.pick(found) : else_;
};

const numbers = ['0', '1', '2', '-1', '00', '9', '99999', '2147483648', '1e99', '1'.repeat(400)];
const directive = /:([a-z]+)\[([^\]\n]*)\]/g;
const san = /\b(?:[KQRBN][a-h]?[1-8]?x?[a-h][1-8]|[a-h](?:x[a-h])?[1-8](?:=[QRBN])?|O-O(?:-O)?)\b/g;
const fence = /^([ >\t]*)(`{3,}|~{3,})([^\n]*)$/gm;
const kinds = [
  'moves',
  'diagram',
  'exercise',
  'game',
  'pattern',
  'yaml',
  'move',
  'constructor',
  '',
];
const attributes = [
  ...[
    'from="main"',
    'from="constructor"',
    'fen="4k3/8/8/8/8/8/8/4K3 w - - 0 1"',
    'view=black',
    'view="up"',
  ],
  ...[
    'at="b"',
    'after="1. e4 e5"',
    'after="1. Ke2"',
    'file="games/1.pgn"',
    'number=0',
    'number=1e3',
    'from=2',
  ],
  ...[
    'to=1',
    'constructor="x"',
    '__proto__=1',
    'from="main" from="b"',
    'x',
    '"',
    '=',
    '{.a}',
    'fen=""',
  ],
  ...[
    'fen="rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq e3 99999999999 0"',
    'from=main to=main',
  ],
];

function nest(random: Random): Mutation {
  const [open = '', close = ''] = random.pick([
    ['> ', ''],
    ['- ', ''],
    ['**', '**'],
    ['*', '*'],
    ['[', ']'],
    ['[', '](x)'],
    ['(', ')'],
    ['(1. e4 ', ')'],
    ['{', '}'],
    ['<b>', '</b>'],
    ['<div>\n', '\n</div>'],
    [':here[', ']'],
    ['![', '](media/dot.svg)'],
    ['`', '`'],
    ['[^', ']'],
  ]);
  const depth = random.pick([2, 5, 20, 45, 60, 300]);
  return ({ text }) => {
    const lines = text.split('\n');
    const at = random.below(lines.length);
    lines[at] = open.repeat(depth) + (lines[at] ?? '') + close.repeat(depth);
    return lines.join('\n');
  };
}

export const courseMutations: readonly Mutation[] = [
  // Fences.
  replaceSome(fence, () => ''),
  replaceSome(fence, ([line = '']) => `${line}\n${line}`),
  replaceSome(
    fence,
    ([, indent, marks, info], { random }) =>
      `${indent}${random.pick(['```', '~~~', '`````', `${marks}\``])}${info}`,
  ),
  replaceSome(fence, ([, indent, marks], { random }) => `${indent}${marks}${random.pick(kinds)}`),
  replaceSome(fence, ([line], { random }) => `${line} ${random.pick(attributes)}`),
  // Directives and names.
  replaceSome(
    directive,
    (match, mutable) => `:${other(directive, mutable, 1, 'here')}[${match[2]}]`,
  ),
  replaceSome(directive, (match, mutable) => `:${match[1]}[${other(directive, mutable, 2, 'x')}]`),
  replaceSome(directive, () => ''),
  replaceSome(directive, ([whole = '']) => whole + whole),
  replaceSome(directive, ([whole = ''], { random }) =>
    random.pick([
      `*${whole}*`,
      `[${whole}](pos:a)`,
      `# ${whole}`,
      `\`${whole}\``,
      `|${whole}|`,
      `\\${whole}`,
    ]),
  ),
  replaceSome(/:claim\[[^\]]*\]/g, (_, { random }) => `:claim[${random.pick(claims)}]`),
  replaceSome(/(?<=:(?:here|same|later)\[|pos:|(?:from|at)=")[\w-]+/g, (_, { random }) =>
    random.pick(labels),
  ),
  replaceSome(/(?<=:(?:here|same|later)\[|pos:|(?:from|at)=")[\w-]+/g, (match, mutable) =>
    other(/(?<=:here\[)[\w-]+/g, mutable, 0, match[0] ?? ''),
  ),
  // Moves, squares, numbers.
  replaceSome(san, (_, mutable) => other(san, mutable, 0, 'e4')),
  replaceSome(san, (_, { random }) => random.pick(moveWords)),
  replaceSome(san, ([whole], { random }) => `${whole} ${random.pick(moveWords)}`),
  replaceSome(san, ([whole], { random }) => `${whole} (${random.pick(moveWords)} ${whole})`),
  replaceSome(san, () => ''),
  replaceSome(/\b[a-h][1-8]\b/g, (_, { random }) => random.pick(squares)),
  replaceSome(/\d+/g, (_, { random }) => random.pick(numbers)),
  replaceSome(/[{}()]/g, () => ''),
  replaceSome(/\{/g, (_, { random }) => `{${random.pick(oneWords)} `),
  // YAML.
  replaceSome(/^(\w+):[ \t]*(.*)$/gm, ([, key, value = ''], { random }) =>
    random.pick([
      `${key}: "${value}"`,
      `${key}: '${value}'`,
      `${key}: |\n  ${value}`,
      `${key}: >-\n  ${value}\n  ${value}`,
      `${key}:\n  - ${value}\n  - ${value}`,
      `${key}: {a: ${value}}`,
      `${key}:${value}`,
      `${key}:`,
      `${key}: ${value}\n${key}: ${value}`,
      `"${key}": ${value} # note`,
      `${key}: !!str ${value}`,
      `${key}: "${value}\\u0000\\uD800"`,
    ]),
  ),
  (mutable) => nest(mutable.random)(mutable),
];

const oneWords = [
  ':here[b]',
  '*a',
  '[x](pos:main)',
  ':mark[e4]',
  '<b>',
  '`1.e4`',
  ':end[x]',
  ':same[main]',
];
