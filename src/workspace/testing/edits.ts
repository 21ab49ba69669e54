import fc from 'fast-check';
import { type CourseFiles, isPageFile } from '../../read/index.ts';

export const settings = { path: 'course.yaml', text: 'title: A\nid: a\nside: white\n' };

/** The files of a course. @param chapters texts of chapters and of pages, by their paths. */
export function filesOf(
  chapters: Readonly<Record<string, string>>,
  more: Partial<CourseFiles> = {},
) {
  const list = Object.entries(chapters).map(([path, text]) => ({ path, text }));
  const pages = list.filter(({ path }) => isPageFile(path));
  const rest = list.filter(({ path }) => !isPageFile(path));
  return { settings, chapters: rest, pages, games: [], media: [], problems: [], ...more };
}

/** A block of moves. */
export const moves = (text: string, attributes = '') =>
  `\`\`\`moves${attributes}\n${text}\n\`\`\`\n\n`;

/** Pieces of chapters that meet, name each other, contradict each other and fail. */
const piece = fc.oneof(
  fc.constantFrom(
    'Words.\n\n',
    ':here[a]\n\n',
    ':here[b] and :mark[e4]\n\n',
    ':claim[loose e5]\n\n',
    '`1.e4 e5` and `2.Nf3`\n\n',
    '[there](pos:a), [here](pos:c)\n\n',
    '[2.Nf3](pos:b), [1.d4](pos:c), `1.Nf3`\n\n',
    '| `1...e5` |\n| --- |\n\n',
    '```diagram at="a"\ncaption: A :claim[attacks e5] :here[d]\n```\n\n',
    '```diagram at="b"\ncaption: B\n```\n\n',
    '```exercise at="c"\nask: Which?\nanswer: Nf3\n```\n\n',
    '```pattern\ntitle: P\nwhite: e4\nat: a\n```\n\n',
    '```exercise after="1. e4 e5 2. Nf3"\nask: White to move. Mate in one.\nanswer: Nc6 {:claim[loose e5] :judge[2925-01-01 Fine.]}\nalso: Nf6 3. Nxe5\nwrong: d6\n```\n\n',
    '```diagram after="1. e4 e5 2. Nf3 Nc6 3. d4"\n```\n\n',
    '```diagram fen="r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w - - 0 1"\n```\n\n',
    '```pattern\ntitle: Q\nwhite: e4\nblack: e5\nreversed: true\nadvice: Nf3\nclaim: loose e5 and replies 1\ntext: Words :judge[1.1.2025 No date.]\nexcept: b\n```\n\n',
    '```pattern\ntitle: R\nwhite: Nf3\nclaim: attacks f3 e5\nexcept: a c\n```\n\n',
    '```game from="a"\n1. e4 e5 2. Nf3 1-0\n```\n\n',
    '![x](media/x.png) [y](2.md)\n\n',
  ),
  fc
    .record({
      line: fc.constantFrom(
        '1. e4 e5 2. Nf3 Nc6',
        '1. Nf3 Nc6 2. e4 e5 =',
        '1. e4 c5 ( 1... e5 2. d4 ) 2. Nf3',
        'Nf3 {:same[a]} Nc6 {:later[c]}',
        '1. e4?! e5 2. Bc4 +-',
        '1. e4 e5 2. Ba6',
        '1. e4 e5 2. Ba6?? Nxa6',
        '1. e4 e5 2. Nf3 Nc6 {[on](pos:a)}',
        '1... e5 2. Nf3? (2. Bc4 {:option[too]}) 2... Nc6',
        'Ng1 Nb8 {:end[x]}',
        '1. e4 (1. e4',
        '1. O-O',
      ),
      name: fc.constantFrom(
        '',
        ' {:here[a]}',
        ' {:here[b]}',
        ' {:here[c]}',
        ' {:allow[reply-unanswered x]}',
      ),
      from: fc.constantFrom('', '', ' from="a"', ' from="b"', ' from="c"', ' from="d"'),
    })
    .map(({ line, name, from }) => moves(line + name, from)),
);
const chapter = fc.array(piece, { maxLength: 5 }).map((pieces) => pieces.join(''));
const names = [...['1', '2', '3', '4'].map((name) => `chapters/${name}.md`), 'pages/5.md'];
/** What a page says of where it is published. */
const front = fc.constantFrom(
  '',
  '---\ntitle: About\n---\n\n',
  '---\ntitle: About\nin: head\nmenu: We\nbook: yes\n---\n\n',
);
/** An edit of a small course, and whether another process goes on from there. */
export const edit = fc
  .record({
    file: fc.constantFrom(...names),
    front,
    /** Absent: the chapter is taken out. */
    text: fc.option(chapter, { nil: undefined, freq: 6 }),
    restart: fc.nat(3).map((n) => n === 0),
    media: fc.constantFrom([], ['media/x.png']),
    side: fc.constantFrom('white', 'white', 'white', 'black', 'both'),
  })
  .map(({ front, text, ...rest }) => ({
    ...rest,
    text: text !== undefined && isPageFile(rest.file) ? front + text : text,
  }));
