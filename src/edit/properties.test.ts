import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { soundCourses } from '../../tests/sound-courses.ts';
import { legalMoves, playSan } from '../chess/index.ts';
import { applyFixes } from '../diagnostics/index.ts';
import { type Block, buildCourse } from '../model/index.ts';
import { filesBeside, findFiles, readChapter, readCourse } from '../read/index.ts';
import { addAnswer, addLine, drawAt, type Edits, type NewMove, sayAt, setGlyph } from './index.ts';
import { inOrder, type PlainNode, plainTree } from './testing/plain-tree.ts';

/** The long chapters are the handbook's pages of rules and claims, which have blocks as code alone. */
const longest = 30_000;

/** The chapters of the repository's own courses; those of the demo with other line ends, too. */
const chapters = (
  await Promise.all(
    soundCourses.map(async ({ folder, name }) => {
      const files = await findFiles(folder);
      const beside = filesBeside(files);
      return (name === 'demo-course' ? ['\n', '\r\n'] : ['\n']).flatMap((newline) => {
        const sources = files.chapters
          .filter(({ text }) => text.length < longest)
          .map(({ path, text }) => ({ path, text: text.replaceAll('\n', newline) }));
        const { chapters: all } = buildCourse(readCourse({ ...files, chapters: sources }));
        return all.map((chapter, at) => ({ chapter, text: sources[at]?.text ?? '', beside }));
      });
    }),
  )
).flat();
type Written = (typeof chapters)[number];

/**
 * A block of a chapter with edits made, read in a chapter of its own: whole chapters take long to read, and what
 * stands outside of a block is not touched.
 */
function reread({ text, chapter, beside }: Written, block: Block, edits: Edits) {
  const start = text.lastIndexOf('\n', block.place.start.offset - 1) + 1;
  const end = block.place.end.offset;
  for (const { place } of edits) {
    expect(place.start.offset).toBeGreaterThan(start);
    expect(place.end.offset).toBeLessThan(end);
  }
  const now = applyFixes(text, edits);
  const around = [text.slice(0, start), text.slice(end)] as const;
  expect(now.startsWith(around[0]) && now.endsWith(around[1])).toBe(true);
  const own = now.slice(start, now.length - around[1].length);
  const short = `---\ntitle: A\n---\n\nBefore.\n\n${own}\n\nBehind.\n`;
  const read = readChapter({ path: chapter.file, text: short }, beside);
  expect(read.blocks).toHaveLength(1);
  expect(JSON.stringify(read.body)).toContain('"Behind."');
  return { problems: read.problems.length, block: read.blocks[0] };
}

const unedited = new Map<Block, ReturnType<typeof reread>>();

/** The same without an edit: read once. */
function asWritten(written: Written, block: Block): ReturnType<typeof reread> {
  const known = unedited.get(block) ?? reread(written, block, []);
  unedited.set(block, known);
  return known;
}

function movesOf({ block }: ReturnType<typeof reread>) {
  if (block?.kind !== 'moves') throw new Error('a block of moves');
  return block.moves;
}

/** Blocks whose moves can be written to. */
const places = chapters.flatMap((written) =>
  written.chapter.blocks
    .filter((block) => block.kind === 'moves' && block.nodes.length > 1)
    .map((block) => ({ written, block })),
);

/** Words that would end the comment, or begin something, if they were written as they are. */
const hostile = fc.array(
  fc.constantFrom(
    'the knight',
    ' ',
    '}',
    '{',
    '\\',
    ':claim[mate]',
    '::claim[mate]',
    ':here[x "y"]',
    ':foo{a=1}',
    ':end',
    '\n',
    '\r\n```\r\n',
    ')',
    '( 1. e4',
    '1-0',
    '$4',
    ';',
    '%',
    '*so*',
    '`',
    '<b>',
    '&amp;',
    '"',
    '---',
    '# x',
    '- x',
  ),
  { maxLength: 6 },
);

const choice = fc.record({
  place: fc.nat(),
  node: fc.nat(),
  moves: fc.array(fc.nat(), { minLength: 1, maxLength: 4 }),
  glyphs: fc.subarray([2, 16, 140], { maxLength: 2 }),
  words: hostile,
  isOption: fc.boolean(),
  drawn: fc.constantFrom('e4', 'd5', 'c4'),
});

const pick = <T>(list: readonly T[], index: number): T => list[index % list.length] as T;

/** What stands outside of the edits is what stood there, and they replace at most white space. */
function touchesNothing(text: string, edits: Edits): boolean {
  return edits.every(({ place }) =>
    /^[ \t]*$/.test(text.slice(place.start.offset, place.end.offset)),
  );
}

/** The directives of a comment, and the comment without them. */
function directivesIn(said: string): string[] {
  return [...said.matchAll(/"type":"courseDirective","name":"(\w+)"/g)].map(
    ([, name = '']) => name,
  );
}

test('a random move, written at a random place in a random way, is read as just that', () => {
  fc.assert(
    fc.property(choice, ({ place, node: at, moves, glyphs, words, isOption }) => {
      const { written, block } = pick(places, place);
      const before = asWritten(written, block);
      const node = pick(
        block.nodes.filter(({ position }) => position && legalMoves(position).length > 0),
        at,
      );
      const known = new Set(node.children.map((child) => block.nodes[child]?.move?.san));
      const line: NewMove[] = [];
      let position = node.position;
      for (const [index, number] of moves.entries()) {
        const legal = position ? legalMoves(position) : [];
        const san = pick(
          legal.filter((each) => index > 0 || !known.has(each)),
          number,
        );
        if (position === undefined || san === undefined) break;
        line.push(
          index === 0
            ? {
                san,
                glyphs,
                comment: words.join(''),
                directives: isOption ? [{ name: 'option', argument: 'too slow' }] : [],
              }
            : { san },
        );
        position = playSan(position, san)?.after;
      }
      if (line.length === 0) return;
      const edits = addLine(written, { block: block.key, node: node.index }, line);
      expect(touchesNothing(written.text, edits)).toBe(true);
      const after = reread(written, block, edits);
      expect(after.problems).toBe(before.problems);

      // The tree that is meant: the old one, and the line behind the node's other moves.
      const syntax = movesOf(before);
      const wanted = plainTree(syntax);
      let end = inOrder(syntax, wanted)[node.index] as PlainNode;
      const added: PlainNode[] = [];
      for (const { san, glyphs: nags = [] } of line) {
        const next: PlainNode = { san, glyphs: [...nags], says: [], before: [], children: [] };
        added.push(next);
        end.children.push(next);
        end = next;
      }
      const read = plainTree(movesOf(after));
      const first = findLine(read, wanted, added[0] as PlainNode);
      const said = first?.says ?? [];
      const isSaid = isOption || words.join('').trim() !== '';
      expect(said).toHaveLength(isSaid ? 1 : 0);
      expect(said.flatMap(directivesIn)).toEqual(isOption ? ['option'] : []);
      if (first) first.says = [];
      expect(read).toEqual(wanted);
    }),
    { numRuns: runs(150) },
  );
});

/** The node of one tree that stands where a node stands in another. */
function findLine(tree: PlainNode, like: PlainNode, node: PlainNode): PlainNode | undefined {
  for (const [at, child] of like.children.entries()) {
    const there = tree.children[at];
    if (there === undefined) continue;
    if (child === node) return there;
    const deeper = findLine(there, child, node);
    if (deeper !== undefined) return deeper;
  }
  return undefined;
}

test('what is drawn, judged and said at a random place is read as just that, and can be taken off', () => {
  fc.assert(
    fc.property(choice, ({ place, node: at, words, drawn, glyphs: [glyph = 10] }) => {
      const { written, block } = pick(places, place);
      const node = pick(block.nodes.slice(1), at);
      const ref = { block: block.key, node: node.index };
      const treeAfter = (edits: Edits = []) => {
        const read = edits.length === 0 ? asWritten(written, block) : reread(written, block, edits);
        const tree = plainTree(movesOf(read));
        const own = inOrder(movesOf(read), tree)[node.index] as PlainNode;
        return { tree, own, problems: read.problems };
      };
      const old = treeAfter();

      const comment = words.join('');
      if (comment.trim() !== '') {
        const now = treeAfter(sayAt(written, ref, { comment }));
        expect(now.problems).toBe(old.problems);
        expect(now.own.says.flatMap(directivesIn)).toEqual(old.own.says.flatMap(directivesIn));
        now.own.says = old.own.says;
        expect(now.tree).toEqual(old.tree);
      }

      const glyphed = treeAfter(setGlyph(written, ref, glyph));
      expect(glyphed.own.glyphs.includes(glyph)).toBe(!old.own.glyphs.includes(glyph));
      glyphed.own.glyphs = old.own.glyphs;
      expect(glyphed.tree).toEqual(old.tree);

      const marked = treeAfter(drawAt(written, ref, { kind: 'mark', item: drawn }));
      expect(marksIn(marked.own).has(drawn)).toBe(!marksIn(old.own).has(drawn));
      const others = (own: PlainNode) => [...marksIn(own)].filter((mark) => mark !== drawn);
      expect(others(marked.own)).toEqual(others(old.own));
      marked.own.says = old.own.says;
      expect(marked.tree).toEqual(old.tree);
    }),
    { numRuns: runs(100) },
  );
});

function marksIn({ says }: PlainNode): ReadonlySet<string> {
  const marks = says.join(' ').matchAll(/"name":"mark","argument":"([^"]*)"/g);
  return new Set([...marks].flatMap(([, items = '']) => items.split(' ')));
}

test('an answer, another good move and a bad one are added to every exercise', () => {
  let tried = 0;
  for (const written of chapters) {
    for (const block of written.chapter.blocks) {
      if (block.kind !== 'exercise' || block.position === undefined) continue;
      const known = [...block.answer, ...block.also, ...block.wrong].map(
        (line) => line[1]?.move?.san,
      );
      const san = legalMoves(block.position).find((each) => !known.includes(each));
      if (san === undefined) continue;
      for (const key of ['answer', 'also', 'wrong'] as const) {
        const { text } = written;
        // A folded text is no list, and cannot become one by itself.
        const { start, end } = block.place;
        if (new RegExp(`\\n${key}: >`).test(text.slice(start.offset, end.offset))) continue;
        const comment = "Here: it is # “so”, }it's";
        const edits = addAnswer(written, block.key, key, [{ san, comment }]);
        const { block: now, problems } = reread(written, block, edits);
        if (now?.kind !== 'exercise') throw new Error('still an exercise');
        expect(problems).toBe(0);
        const lines = now[key];
        expect(lines).toHaveLength(block[key].length + 1);
        expect(plainTree(lines.at(-1) as never).children.map((node) => node.san)).toEqual([san]);
        expect(JSON.stringify(lines.at(-1)?.comments)).toContain("it is # “so”, }it's");
        tried++;
      }
    }
  }
  expect(tried).toBeGreaterThan(20);
});
