/** What the reader hands over is plain data, which nobody changes, and knows where each word of it stands. */
import path from 'node:path';
import type { PhrasingContent, RootContent } from 'mdast';
import { beforeAll, describe, expect, test } from 'vitest';
import { type ChapterSyntax, findFiles, readCourse } from '../read/index.ts';
import { buildCourse } from './build-course.ts';
import { walkText } from './walk-text.ts';

const root = path.resolve(import.meta.dirname, '../..');

describe.each(['demo-course', 'content/handbook', 'content/starter'])('%s', (folder) => {
  let syntax: ReturnType<typeof readCourse>;
  const texts = new Map<string, string>();
  beforeAll(async () => {
    const files = await findFiles(path.join(root, folder));
    for (const { path: file, text } of files.chapters) texts.set(file, text);
    syntax = readCourse(files);
  });

  test('can be cloned and written to a disk', () => {
    expect(structuredClone(syntax)).toEqual(syntax);
    expect(JSON.parse(JSON.stringify(syntax.chapters))).toEqual(syntax.chapters);
  });

  test('is not changed by the model', () => {
    const before = buildCourse(syntax);
    freeze(syntax);
    expect(buildCourse(syntax)).toEqual(before);
  });

  test('knows where each argument, label, address and claim stands', () => {
    const wrong: string[] = [];
    let seen = 0;
    for (const chapter of syntax.chapters) {
      const text = texts.get(chapter.file) ?? '';
      const check = (
        range: { start: { offset: number }; end: { offset: number } },
        meant: string,
      ) => {
        seen++;
        const there = text
          .slice(range.start.offset, range.end.offset)
          .replace(/\s+/g, ' ')
          .replace(/^\s*"(.*)"$/, '$1')
          .trim();
        if (there !== meant) wrong.push(`${chapter.file}: ${there} instead of ${meant}`);
      };
      for (const node of nodesOf(chapter)) {
        if (node.type === 'courseDirective') check(node.argumentRange, node.argument);
        if (node.type === 'positionLink') check(node.labelRange, node.label);
      }
      for (const block of chapter.blocks) {
        if (block.kind !== 'diagram') continue;
        for (const claim of block.claims) check(claim.place, claim.text);
      }
    }
    expect(wrong).toEqual([]);
    if (folder !== 'content/starter') expect(seen).toBeGreaterThan(40);
  });
});

function* nodesOf(chapter: ChapterSyntax): Generator<RootContent | PhrasingContent> {
  const nodes: (RootContent | PhrasingContent)[] = [];
  walkText(chapter.body.children, (node) => nodes.push(node));
  for (const block of chapter.blocks) {
    if (block.kind === 'moves') {
      for (const { content } of block.moves.comments) walkText(content, (node) => nodes.push(node));
    }
    if (block.kind === 'diagram') walkText(block.caption, (node) => nodes.push(node));
    if (block.kind === 'exercise') walkText(block.ask, (node) => nodes.push(node));
  }
  yield* nodes;
}

function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return;
  Object.freeze(value);
  for (const inner of Object.values(value)) freeze(inner);
}
