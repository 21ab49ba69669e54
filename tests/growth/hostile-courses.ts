/**
 * Texts that a reader of Markdown, YAML or moves may take more than its share of time for: each is made at
 * any length. They come from what is known of such parsers (looking back for what an opening sign
 * belongs to, ahead for what closes it, matching each line with all it is nested in, comparing each name
 * with all others) and from what was measured here.
 */
export type Files = Readonly<Record<string, string>>;

const settings = 'title: A\nid: a\nside: white\n';

/** A piece again and again, up to a length. */
const fill = (piece: string, length: number) => piece.repeat(Math.max(1, length / piece.length));

/** Pieces that differ, up to a length. */
function many(length: number, piece: (index: number) => string): string {
  let text = '';
  for (let index = 0; text.length < length; index++) text += piece(index);
  return text;
}

const chapter = (text: string): Files => ({
  'course.yaml': settings,
  'chapters/1.md': `---\ntitle: One\n---\n\n${text}\n`,
});
const moves = (text: string, attributes = '') => `\`\`\`moves${attributes}\n${text}\n\`\`\`\n`;
const front = (yaml: string): Files => ({
  'course.yaml': settings,
  'chapters/1.md': `---\n${yaml}\n---\n\nText.\n`,
});
const letters = 'abcdefgh';
const pawnMoves = [...letters].flatMap((file) => [`${file}3`, `${file}4`]);
const ofBlack = [...letters].flatMap((file) => [`${file}6`, `${file}5`]);
const shuffle = (index: number) => `${2 * index + 1}. Nf3 Nf6 ${2 * index + 2}. Ng1 Ng8 `;

const texts: Readonly<Record<string, (n: number) => string>> = {
  'plain words': (n) => fill('word and word. ', n),
  'links that open': (n) => fill('[a](', n),
  'brackets that open': (n) => fill('[', n),
  'brackets that close': (n) => fill('a]', n),
  'brackets in brackets': (n) => '['.repeat(n / 2) + ']'.repeat(n / 2),
  'pictures that open': (n) => fill('![', n),
  'pictures in pictures': (n) => '!['.repeat(n / 6) + '](u)'.repeat(n / 6),
  'links without an address': (n) => fill('[a]', n),
  'stars that open': (n) => fill('*a ', n),
  'stars within words': (n) => fill('a**b', n),
  'stars that close': (n) => fill('a* ', n),
  'stars and underscores': (n) => fill('*a_ ', n),
  'stars and underscores alone': (n) => fill('*_', n),
  'emphasis in emphasis': (n) => '*a '.repeat(n / 6) + ' a*'.repeat(n / 6),
  'backticks of all lengths': (n) => many(n, (index) => `${'`'.repeat(index + 1)}a`),
  'HTML comments that open': (n) => fill('a <!--', n),
  'HTML instructions that open': (n) => fill('a <?', n),
  'HTML tags that open': (n) => fill('<div>', n),
  'HTML tags that are cut short': (n) => fill('<br ', n),
  'HTML in each paragraph': (n) => `<b>\n\n${fill('a\n\n', n)}`,
  'HTML with our own sign': (n) => `<!-- own${'-'.repeat(n)}x -->`,
  'directives that open': (n) => fill(':a[', n),
  'directives in directives': (n) => ':a['.repeat(n / 4) + ']'.repeat(n / 4),
  colons: (n) => ':'.repeat(n),
  'entities that are none': (n) => fill('&a', n),
  entities: (n) => fill('&amp;', n),
  'quotes in quotes': (n) => '>'.repeat(n),
  'quotes that go on without a sign': (n) => `> a\n${fill('a\n', n)}`,
  'lists in lists': (n) => `${fill('- ', n)}a`,
  'lists in quotes': (n) => `${fill('> - ', n)}a`,
  'items of a list': (n) => fill('- a\n', n),
  'rows of a table': (n) => `|a|b|\n|-|-|\n${fill('|a|b|\n', n)}`,
  'short rows of a wide table': (n) =>
    `|${'a|'.repeat(n ** 0.5)}\n|${'-|'.repeat(n ** 0.5)}\n${fill('a\n', n)}`,
  'headings that are underlined': (n) => fill('a\n=\n', n),
  headings: (n) => fill('# a\n', n),
  'headings of one name': (n) => many(n, (index) => `# a-${index % 2}\n`),
  'notes of notes': (n) => many(n, (index) => `[^${index}]: [^${index + 1}]\n`),
  'notes of notes, apart': (n) => many(n, (index) => `[^${index}]: [^${index + 1}]\n\n`),
  'notes on one line': (n) => many(n, (index) => `[^${index}]: `),
  'one note, often': (n) => `${fill('a[^a]\n\n', n)}[^a]: x\n`,
  definitions: (n) => many(n, (index) => `[${index}]: https://example.org\n`),
  'fences that open': (n) => fill('```\n', n),
  'blanks in a block': (n) => `\`\`\`moves\n1. e4\n${' '.repeat(n)}`,
  'attributes of a block': (n) => `\`\`\`moves ${many(n, (index) => `a${index}="b" `)}\n\`\`\``,
  'spaces in a word': (n) => `a${' '.repeat(n)}b`,
  'empty lines': (n) => '\n'.repeat(n),
  'line ends of old': (n) => '\r'.repeat(n),

  'a long game': (n) => moves(many(n, shuffle)),
  'variations in variations': (n) => moves(`1. e4 ${'(1. d4 '.repeat(n / 8)}${')'.repeat(n / 8)}`),
  'variations that open': (n) => moves(`1. e4 ${'('.repeat(n)}`),
  'variations that stay open': (n) => moves(`1. e4 ${fill('(1. d4 ', n)}`),
  'variations that close': (n) => moves(`1. e4 ${')'.repeat(n)}`),
  'variations at one move': (n) => moves(`1. e4 ${fill('(1. d4) ', n)}`),
  'comments at one move': (n) => moves(`1. e4 ${fill('{a} ', n)}`),
  'comments that open': (n) => moves(fill('1. e4 {', n)),
  'a comment of brackets': (n) => moves(`1. e4 {${fill('[a](', n)}}`),
  'glyphs and suffixes': (n) => moves(`1. e4 ${fill('$1 ', n / 2)} ${fill('! ', n / 2)}`),
  'numbers without moves': (n) => moves(fill('1 ', n)),
  'words that are no moves': (n) => moves(fill('xyzzy ', n)),
  'moves that cannot be played': (n) => moves(`1. e4 ${fill('(1. Ke5) ', n)}`),
  'tags that open': (n) => moves(fill('[A "', n)),
  'blocks of one line': (n) => fill(moves('1. e4 e5 2. Nf3 Nc6'), n),
  'two trees of one trunk': (n) => {
    const trunk = many(n / 4, shuffle);
    const leaves = many(n / 4, (index) => `(99. ${pawnMoves[index % 16]}) `);
    return moves(`${trunk} 99. a3 ${leaves}`) + moves(`${trunk} 99. a3 ${leaves}`);
  },
  'blocks of other ways to one position': (n) =>
    many(n, (index) => moves(index % 2 ? '1. d4 Nf6 2. c4 e6' : '1. c4 e6 2. d4 Nf6')),
  'advice that differs': (n) => many(n, (index) => moves(`1. ${pawnMoves[index % 16]}`)),
  'lines without an answer': (n) =>
    moves(`1. e4 e5 ${many(n, (index) => `(1... ${ofBlack[index % 16]}) `)}`),
  'lines behind a bad move': (n) =>
    moves(`${many(n / 2, shuffle)} 99. a3? ${fill('(99. b3) ', n / 2)}`),
  'names and links to none': (n) =>
    moves(`1. e4 {${many(n / 2, (index) => `:here[abcdef${index}] `)}}`) +
    many(n / 2, (index) => `[x](pos:zbcdxf${index})\n\n`),
  'two long names': (n) =>
    `${moves(`1. e4 {:here[${'a'.repeat(n / 2)}]}`)}[x](pos:${'b'.repeat(n / 2)})`,
  'one name, often': (n) => moves(`1. e4 {${fill(':here[a] ', n)}}`),
  'names in the text, used before': (n) =>
    many(n / 2, (index) => moves('1. e5', ` from="a${index}"`)) +
    many(n / 2, (index) => `${moves('1. e4')}\n:here[a${index}]\n\n`),
  'names where nothing is shown': (n) =>
    many(n / 2, (index) => `:here[a${index}]\n\n`) +
    many(n / 2, (index) => moves('e5', ` from="a${index}"`)),
  'blocks that start from the next': (n) =>
    many(n, (index) => moves(`Nf3 {:here[a${index}]}`, ` from="a${index + 1}"`)),
  'names in a long game': (n) => moves(many(n, (index) => `${shuffle(index)} {:here[a${index}]} `)),
  'links to names': (n) =>
    moves(`1. e4 {${many(n / 2, (index) => `:here[a${index}] `)}}`) +
    many(n / 2, (index) => `[x](pos:a${index})\n\n`),
  'comments that open variations': (n) => moves(`1. e4 ${fill('({a} 1. d4 {b}) ', n)}`),
  'exercises of one position': (n) =>
    fill('```exercise after="1. e4"\nask: x\nanswer: e5\n```\n\n', n),
  'diagrams of one position': (n) =>
    moves('1. e4 {:here[a]}') + fill('```diagram at="a"\ncaption: x\n```\n\n', n),
  'links to chapters': (n) => fill('[a](1.md)\n\n', n),
  'mentions of no move': (n) =>
    fill(moves('1. e4 e5 2. Nf3'), n / 2) + fill('`5.Qh5` and more.\n\n', n / 2),
  'mentions in a long game': (n) =>
    moves(many(n, (index) => `${shuffle(index)} {\`${2 * index + 1}.Nf3\`} `)),
  'allowances without a finding': (n) => moves(`1. e4 {${fill(':allow[reply-unanswered x] ', n)}}`),
  'claims at the end of a long game': (n) =>
    moves(`${many(n / 2, shuffle)} {${fill(':claim[lost-castling white] ', n / 2)}}`),
  'claims of what would be': (n) =>
    moves(`1. e4 {:claim[after e5 Nf3: ${fill('attacks f3 e5 and ', n / 2)}check]}`) +
    moves(`1. e4 {:claim[after e5 Nf3: ${fill('attacks e5 f3 or ', n / 2)}check]}`),
  'arrows of one board': (n) => moves(`1. e4 {${fill(':plan[e4-e5 e5-e6 g1-h4] ', n)}}`),
  'patterns in many positions': (n) =>
    moves(
      `1. e4 ${many(n / 2, (index) => `(1. ${pawnMoves[index % 16]} ${ofBlack[(index >> 4) % 16]}) `)}`,
    ) + fill('```pattern\ntitle: x\nwhite: e2\n```\n\n', n / 2),
  'squares of a diagram': (n) => `\`\`\`diagram after="1. e4"\nmark: ${fill('e4 ', n)}\n\`\`\``,
  'lines of an exercise': (n) =>
    `\`\`\`exercise after="1. e4"\nask: x\nanswer:\n${fill(' - e5\n', n)}\`\`\``,
  'pictures that are missing': (n) => fill('![a](none.png)\n\n', n),
};

const others: Readonly<Record<string, (n: number) => Files>> = {
  'settings that nobody knows': (n) => front(`title: x\n${many(n, (index) => `k${index}: 1\n`)}`),
  'settings that are given twice': (n) => front(`title: x\n${fill('a: 1\n', n)}`),
  'lists of settings': (n) => front(`title: ${'['.repeat(n / 2)}${']'.repeat(n / 2)}`),
  'names that are lists': (n) => front(fill('? ', n)),
  'references to references': (n) =>
    front(`title: x\n${many(n, (index) => `k${index}: &a${index} [*a${index - 1}]\n`)}`),
  'rules that nobody knows': (n) => ({
    ...chapter('Text.'),
    'course.yaml': `${settings}rules:\n${many(n, (index) => `  k${index}: off\n`)}`,
  }),
  'blocks that show one long game': (n) => ({
    ...chapter(fill('```game file="games/a.pgn"\n```\n\n', n / 2)),
    'games/a.pgn': many(n / 2, shuffle),
  }),
  'small games of a file': (n) => ({
    ...chapter('```game file="games/a.pgn" number=2\n```'),
    'games/a.pgn': fill('[White "A"]\n\n1. e4 *\n\n', n),
  }),
  'news with links to nothing': (n) => ({
    ...chapter('Text.'),
    'news/1.md': `---\ntitle: x\ndate: 2026-01-01\n---\n\n${fill('[a](x.md)\n\n', n)}`,
  }),
  'chapters with links to nothing': (n) => {
    const text = chapter('[a](none.md) ![a](none.png)')['chapters/1.md'] ?? '';
    const files: Record<string, string> = { 'course.yaml': settings };
    for (let index = 0; index < n / 50; index++) files[`chapters/${index}.md`] = text;
    return files;
  },
};

/** Files of games that are imported, and compared with a course. */
export const hostileGames: Readonly<Record<string, (n: number) => string>> = {
  'small games': (n) => fill('1. e4 *\n', n),
  'games of nothing': (n) => fill('*\n', n),
  'games with tags': (n) => fill('[White "A"]\n\n1. e4 e5 *\n\n', n),
  'games of one name': (n) => many(n, (index) => `[White "A-${index % 2}"]\n\n1. d4 *\n\n`),
  'tags that open': (n) => fill('[A "', n),
  brackets: (n) => '['.repeat(n),
  'lines of brackets': (n) => fill('[\n', n),
  'one long tag': (n) => `[White "${'a'.repeat(n)}"]\n\n1. e4 *`,
  'many tags': (n) => `${many(n, (index) => `[A${index} "x"]\n`)}\n1. e4 *`,
  'comments at one move': (n) => `1. e4 ${fill('{a} ', n)}`,
  'a comment left open': (n) => `1. e4 ${'{'.repeat(n)}`,
  'variations that open': (n) => `1. e4 ${'('.repeat(n)}`,
  'variations that close': (n) => `1. e4 ${')'.repeat(n)}`,
  'variations at one move': (n) => `1. e4 ${fill('(1. d4 d5) ', n)}`,
  'variations in variations': (n) => `1. e4 ${'(1. d4 '.repeat(n / 8)}${')'.repeat(n / 8)}`,
  'moves that cannot be played': (n) => `1. e4 ${fill('(1. Ke5) ', n)}`,
  'words that are no moves': (n) => fill('xyzzy ', n),
  'results one after another': (n) => fill('1-0 ', n),
  'a long game': (n) => many(n, shuffle),
  'one long line': (n) => fill('1. e4 e5 ', n),
  'empty lines': (n) => '\n'.repeat(n),
  'a FEN without an end': (n) => `[FEN "${fill('8/', n)}"]\n\n1. e4 *`,
};

export const hostileCourses: Readonly<Record<string, (n: number) => Files>> = {
  ...Object.fromEntries(
    Object.entries(texts).map(([name, text]) => [name, (n: number) => chapter(text(n))]),
  ),
  ...others,
};

/** Some that are parsed at a greater length too, where work that grows faster stands out even if it is light. */
export const longCourses: readonly string[] = [
  'links that open',
  'brackets that open',
  'pictures that open',
  'stars that open',
  'stars and underscores alone',
  'backticks of all lengths',
  'HTML tags that are cut short',
  'directives that open',
  'entities that are none',
  'quotes in quotes',
  'lists in lists',
  'notes of notes, apart',
  'variations that stay open',
  'comments that open',
  'a long game',
];
export const longGames: readonly string[] = [
  'games of nothing',
  'brackets',
  'comments at one move',
];
