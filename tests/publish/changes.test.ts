/** What changed between two editions: edits planted in the example course are told, and no others. */
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { compareCourses, writeChanges } from '../../src/changes/index.ts';
import type { CourseFiles } from '../../src/read/index.ts';
import { type CourseInMemory, loadInMemory, makeInMemory } from '../mutation/course-in-memory.ts';
import { soundCourses } from '../sound-courses.ts';

const demo = await loadInMemory(path.resolve(import.meta.dirname, '../../demo-course'));
const other = 'chapters/2-other-answers.md';

type Edit = readonly [file: string, from: string, to: string];

function edited(files: CourseFiles, edits: readonly Edit[]): CourseFiles {
  const chapters = files.chapters.map((chapter) => {
    let { text } = chapter;
    for (const [file, from, to] of edits) {
      if (file !== chapter.path) continue;
      if (text.split(from).length !== 2) throw new RangeError(`not once in ${file}: ${from}`);
      text = text.replace(from, () => to);
    }
    return { path: chapter.path, text };
  });
  return { ...files, chapters };
}

/** The changes from one edition to another, which must be sound. */
function changesBetween(from: CourseInMemory, { now }: CourseInMemory) {
  expect(now.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const checked = now.checked();
  if (!checked) throw new Error('the edition is not sound');
  return compareCourses(from.course, checked);
}

/** Reads, plays and checks only what differs from the example course. */
const editionOf = (files: CourseFiles) => (files === demo.files ? demo : makeInMemory(files, demo));

/** The changes from the example course to an edition of it. */
function changesTo(files: CourseFiles, from: CourseFiles = demo.files) {
  return changesBetween(editionOf(from), editionOf(files));
}

const told = (...edits: readonly Edit[]) =>
  writeChanges(changesTo(edited(demo.files, edits)), { language: 'en', form: 'text' });

describe('what is no change', () => {
  for (const { name, folder } of soundCourses) {
    test(`${name} against itself`, async () => {
      const course = await loadInMemory(folder);
      const again = makeInMemory(course.files);
      expect(changesBetween(course, again)).toEqual({ chapters: [] });
    });
  }

  test('other words, other titles, other files, another place in the chapter', () => {
    const { files } = demo;
    const renamed = files.chapters.map(({ path: file, text }) => ({
      path: file.replace('.md', '-again.md'),
      text: text
        .replace(/^title: .*$/m, 'title: Another title')
        // The first letter of words in comments without a directive, and lines of prose.
        .replace(/\{([A-Z])(?=[^:{}[\]]*\})/g, '{Now $1')
        .concat('\n## One more section\n\nMore prose.\n'),
    }));
    // Pages, which link to chapters by their files, are no part of what changes.
    const again = { ...files, chapters: renamed, pages: [] };
    expect(changesTo(again)).toEqual({ chapters: [] });
    const block = '```moves from="ed"\n5. e3 Nf6 {:same[e3-exd5]}\n```\n';
    const moved: Edit[] = [
      [other, block, ''],
      [other, '## Your turn\n', `## Your turn\n\n${block}`],
    ];
    expect(told(...moved)).toBe('');
  });
});

describe('what is planted is told, and only that', () => {
  test('another assessment', () => {
    expect(
      told([other, '5... Qxg5 -+ {:claim[material +3]}', '5... Qxg5 ∓ {:claim[material +3]}']),
    ).toBe('White has other ideas\n  Other assessments\n    after 5...Qxg5: ∓, no longer -+.\n');
  });

  test('a new reply with its answer, once, whatever follows', () => {
    const block =
      '```moves from="ed"\n5. a3 Nf6 6. Nf3\n  ( 6. h3 Be7 = )\n6... Nc6 7. h3 Be7 =\n```\n';
    expect(told([other, '## Your turn\n', `${block}\n## Your turn\n`])).toBe(
      'White has other ideas\n  New replies covered\n' +
        '    after 4...exd5: 5.a3, and the answer is 5...Nf6. (8 new positions)\n',
    );
  });

  test('other advice, with the reason that the author gives the old move', () => {
    const edit: Edit = [
      other,
      '5... Nc6 -+ {and both',
      '5... Bd7 -+ ( 5... Nc6 -+ {:option[the bishop on f8 wants to move first]} ) {Then both',
    ];
    expect(told(edit)).toBe(
      'White has other ideas\n  Other advice\n    after 5.Qxd4: 5...Bd7, no longer 5...Nc6. ' +
        'Why: the bishop on f8 wants to move first\n',
    );
  });

  test('other advice, without a reason that nobody gave; the old line is told with it', () => {
    expect(told([other, '5... Nc6 -+ {and both', '5... Bd7 -+ {Because of both'])).toBe(
      'White has other ideas\n  Other advice\n    after 5.Qxd4: 5...Bd7, no longer 5...Nc6.\n',
    );
  });

  test('an erratum: the old advice is called a mistake, with what its author says of it', () => {
    const erratum = (comment: string) =>
      told([other, '5... Nc6 -+ {and both', `5... Bd7 -+ ( 5... Nc6? ${comment} ) {Then both`]);
    const sentence =
      'White has other ideas\n  Other advice\n    after 5.Qxd4: 5...Bd7, no longer 5...Nc6. 5...Nc6 was a mistake';
    expect(erratum('{loses a piece.}')).toBe(`${sentence}: loses a piece.\n`);
    expect(erratum('')).toBe(`${sentence}.\n`);
  });

  test('a line that goes on, and one that was cut', () => {
    const longer: Edit = [
      other,
      '8... d4 ⩱ {The dream push on move eight.}',
      '8... d4 ⩱ 9. Nb1 Be7 ( 9... Bd6 {:option[also]} )',
    ];
    expect(told(longer)).toBe(
      'White has other ideas\n  Lines that go on\n    after 8...d4: 9.Nb1. (3 new positions)\n',
    );
    const both = edited(demo.files, [longer]);
    expect(writeChanges(changesTo(demo.files, both), { language: 'de', form: 'text' })).toBe(
      'White has other ideas\n  Herausgenommen\n    nach 8...d4: 9.Sb1. (3 Stellungen)\n',
    );
  });

  test('an exercise, without its answer; its words alone do not count', () => {
    expect(
      told([other, 'hint: The knight is on the edge of the board, and so', 'hint: The knight, so']),
    ).toBe('');
    expect(
      told([
        other,
        'wrong: "Nf6 {It develops, but White keeps his pawn and the knight finds a way home.}"',
        'wrong: "Be6 {No.}"',
      ]),
    ).toBe(
      'White has other ideas\n  Exercises\n    Exercise 2 has another answer, or judges other moves.\n',
    );
  });

  test('a new chapter and a dropped one are counted as a whole', () => {
    const text =
      '---\ntitle: A fourth chapter\n---\n\n```moves\n1. b3 d5 2. Bb2 Nf6 3. e3 ( 3. g3 Bf5 = ) 3... Bf5 =\n```\n';
    const longer = {
      ...demo.files,
      chapters: [...demo.files.chapters, { path: 'chapters/4-fourth.md', text }],
    };
    const grown = changesTo(longer);
    expect(grown.chapters).toMatchObject([
      { id: 'fourth', status: 'new', positions: 8, changes: [{ kind: 'reply', positions: 8 }] },
    ]);
    expect(changesTo(demo.files, longer).chapters).toEqual([
      { id: 'fourth', title: 'A fourth chapter', status: 'dropped', positions: 8, changes: [] },
    ]);
  });

  test('a course for the other side', () => {
    const small = (side: string): CourseFiles => ({
      settings: { path: 'course.yaml', text: `title: A\nside: ${side}\n` },
      chapters: [
        { path: 'chapters/1.md', text: '---\ntitle: A\n---\n\n```moves\n1. e4 e5 =\n```' },
      ],
      games: [],
      media: [],
      problems: [],
    });
    expect(changesTo(small('black'), small('white'))).toEqual({
      side: { old: 'white', new: 'black' },
      chapters: [],
    });
  });
});

test('Markdown links to the board, by names where there are any, and escapes what authors wrote', () => {
  const block =
    '```moves from="ed"\n5. a3 Nf6 = {:here[quiet-a3]}\n```\n\n```moves from="quiet-a3"\n6. h3 Be7 =\n```\n';
  const advice: Edit = [
    other,
    '5... Nc6 -+ {and both',
    '5... Bd7 -+ {It is \\*not\\* clear\\: \\:plan\\[x\\], ',
  ];
  const changes = changesTo(
    edited(demo.files, [[other, '## Your turn\n', `${block}\n## Your turn\n`], advice]),
  );
  const text = writeChanges(changes, { language: 'en', form: 'markdown' });
  expect(text).toContain('- [after 4...exd5](pos:ed): 5.a3, and the answer is 5...Nf6. (4 new');
  // No comment at the new move is taken for a reason; the board of other advice stands below the list.
  expect(text).not.toContain('clear');
  expect(text).toMatch(
    /\n```diagram fen="rnbqkbnr\S* b KQkq - 0 5"\ncaption: "After 5\.Qxd4\."\nplan: c8-d7\n```\n/,
  );
  expect(text).toMatch(
    /- \[after 5\.Qxd4\]\(\.\.\/chapters\/2-other-answers\.md#at-rn1qkbnr-[^)]*-w-KQkq\)/,
  );
});
