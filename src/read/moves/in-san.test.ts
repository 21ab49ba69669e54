import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  initialPosition,
  isMoveFault,
  listMoves,
  piecesLanguages,
  playMove,
} from '../../chess/index.ts';
import { readChapter } from '../read-chapter.ts';
import { writeLetters } from '../write-letters.ts';
import { inLettersOf, wordsInSan } from './in-san.ts';

function read(text: string, pieces?: (typeof piecesLanguages)[number]) {
  return readChapter(
    { path: 'chapters/1.md', text },
    { media: new Set(), frontMatter: 'optional', pieces },
  );
}

/** A random game as SAN, from choices. */
function gameOf(choices: readonly number[]): string[] {
  let position = initialPosition;
  const moves: string[] = [];
  for (const choice of choices) {
    const legal = listMoves(position);
    const move = legal[choice % legal.length];
    const played = move && playMove(position, move.san);
    if (!played || isMoveFault(played)) break;
    moves.push(played.san);
    position = played.after;
  }
  return moves;
}

/** A chapter that has the moves in each place that holds moves. */
function chapterOf(moves: readonly string[]): string {
  const line = moves
    .map((san, at) =>
      at % 2 === 0
        ? `${at / 2 + 1}. ${san} {\`${at / 2 + 1}.${san}\` :claim[legal ${san}] N Rook}`
        : `${(at - 1) / 2 + 1}... ${san}`,
    )
    .join(' ');
  const bare = moves.join(' ');
  return [
    '```moves',
    line,
    '```',
    '',
    `Text \`1.${moves[0]}\` Nf3 \`Nf3\`.`,
    '',
    `\`\`\`diagram after="${bare}"`,
    'claim:',
    `  - legal ${moves[0]}`,
    'caption: Nf3',
    '```',
    '',
    '> ```exercise after="1. e4"',
    '> ask: Nf3?',
    `> answer: ${bare}`,
    `> also: ['${bare}']`,
    `> before: ${moves[0]}`,
    '> ```',
    '',
    '```game',
    '[White "Nf3, Q"]',
    '',
    `${bare} ; Nf3`,
    `( ${bare} )`,
    '*',
    '```',
    '',
    '```pattern',
    'title: Nf3',
    'white: Nf3 d4',
    'advice: [Nb4, Qxd5]',
    'claim: pinned Nf6',
    '```',
    '',
  ].join('\n');
}

/** Without the keys of blocks, which are hashes of their text. */
function plain(syntax: ReturnType<typeof read>): unknown {
  return JSON.parse(
    JSON.stringify({ ...syntax, pieces: undefined }, (name, value) =>
      name === 'key' ? '' : value,
    ),
  );
}

test('a chapter in the letters of any language is read as in English ones, places and all', () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(60), { minLength: 1, maxLength: 24 }),
      fc.constantFrom(...piecesLanguages),
      (choices, language) => {
        const english = chapterOf(gameOf(choices));
        const file = { path: 'chapters/1.md', text: english };
        const written = writeLetters(file, 'en', language);
        expect(plain(read(written, language))).toEqual(plain(read(english)));
        expect(writeLetters({ ...file, text: written }, language, 'en')).toBe(english);
      },
    ),
    { numRuns: 12 },
  );
});

test('a chapter in German letters', () => {
  const text = '```moves\n1. e4 e5 2. Sf3 Sc6 3. Lb5 a6 {Der Springer, `4.Lxc6`} 4. 0-0\n```\n';
  const { blocks, problems } = read(text, 'de');
  expect(problems).toEqual([]);
  const [block] = blocks;
  const nodes = block?.kind === 'moves' ? block.moves.nodes : [];
  expect(nodes.map(({ written }) => written?.san)).toEqual([
    undefined,
    'e4',
    'e5',
    'Nf3',
    'Nc6',
    'Bb5',
    'a6',
    '0-0',
  ]);
  const { place } = nodes[3]?.written ?? {};
  expect(text.slice(place?.start.offset, place?.end.offset)).toBe('Sf3');
  const [comment] = block?.kind === 'moves' ? block.moves.comments : [];
  expect(comment?.content.find(({ type }) => type === 'proseMoves')).toMatchObject({
    value: '4.Bxc6',
  });
});

test.each([
  ['de', '```moves\n1. Nf3 Sf6\n```', 'N', 'S'],
  ['de', 'First\n\n```moves\n1. e4\n```\n\n`2.Qh5`', 'Q', 'D'],
  ['es', '```moves\n1. Cf3 {:claim[legal Nc6]}\n```', 'N', 'C'],
  ['fr', '```exercise at="a"\nask: What?\nanswer: "1. Bb5"\n```', 'B', 'F'],
] as const)(
  '%s: an English letter is told, and what to write: %s',
  (language, text, letter, right) => {
    const { problems } = read(text, language);
    expect(problems.map(({ rule }) => rule)).toEqual(['move-unreadable']);
    const [fix] = problems[0]?.fixes ?? [];
    expect(text.slice(fix?.place.start.offset, fix?.place.end.offset)).toBe(letter);
    expect(fix?.text).toBe(right);
    expect(problems[0]?.hint).toContain(`Write ${right};`);
  },
);

test('words keep their letters', () => {
  const german = { language: 'de' } as const;
  expect(wordsInSan('Das Dach, Sa, Tal: Damen auf d4; O-O', german)).toBe(
    'Das Dach, Sa, Tal: Damen auf d4; O-O',
  );
  expect(wordsInSan('Sbd2 Tfxe1+ e8=D exd8D bxa1(S) K2e3 Dh4e1', german)).toBe(
    'Nbd2 Rfxe1+ e8=Q exd8Q bxa1(N) K2e3 Qh4e1',
  );
  expect(inLettersOf('de', 'pinned Nf6 and legal exd8=Q+')).toBe('pinned Sf6 and legal exd8=D+');
  expect(inLettersOf('es', 'Rxe8 Ke2')).toBe('Txe8 Re2');
});
