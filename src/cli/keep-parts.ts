import { createHash } from 'node:crypto';
import path from 'node:path';
import { codeHash, dropOldest, readSealed, writeSealed } from '../files/index.ts';
import type { Chapter, Course } from '../model/index.ts';
import {
  type AskedOfCourse,
  contextOf,
  type PartMaker,
  type Parts,
  recordAsked,
  stillAnswered,
} from '../render/index.ts';
import { comparesFresh } from '../workspace/index.ts';

/** The parts of the chapters of a course, most of them as an earlier build made them. */
export interface KeptParts extends Parts {
  /** The files of the chapters whose parts were made anew, for tests and for whoever wonders. */
  readonly made: () => readonly string[];
  /** Keeps them for the next build. */
  save(): Promise<void>;
}

export interface KeepPartsOptions {
  /** Folder of the user's cache. */
  readonly cache: string;
  /** The course's folder, by which its parts are kept. */
  readonly folder: string;
  /** A print of what was read and played of a chapter, by its file. */
  readonly print: (file: string) => string;
  /** All that will be asked for: a chapter's parts are made together, of one document. */
  readonly makers: readonly PartMaker<unknown>[];
}

/** What is kept of a chapter: a line of JSON values with tabs between them, which JSON has in no value. */
interface Head {
  readonly file: string;
  /** Print of the chapter. */
  readonly own: string;
  readonly asked: readonly AskedOfCourse[];
  /** What follows: a part each. */
  readonly parts: readonly (readonly [kind: string, inputs: string])[];
}

interface Kept extends Head {
  readonly line: Buffer;
}

/** In bytes: the parts of ten thousand chapters. */
const largest = 2_000_000_000;

/** So many courses are kept. */
const mostCourses = 20;

/**
 * Keeps what is made of each chapter, with every answer that making it took from the rest of the course. A part is
 * taken while chapter and answers are as they were; a damaged file is as good as none.
 */
export async function keepParts(course: Course, options: KeepPartsOptions): Promise<KeptParts> {
  const { cache, folder, makers } = options;
  const name = `parts-${hashOf(path.resolve(folder))}`;
  const sealedFor = JSON.stringify([name, await codeHash()]);
  const content = await readSealed(cache, name, { sealedFor, largest });
  const before = new Map(linesOf(content).map((line) => [line.file, line]));
  const prints = printChapters(course, options.print);
  const edition = hashOf(JSON.stringify([...prints]));
  const shared = contextOf(course);
  const now = new Map<string, Kept>();
  const made: string[] = [];

  const make = (chapter: Chapter, own: string): Kept => {
    const { context, asked } = recordAsked(shared, chapter, edition);
    const parts = makers.map((maker) => JSON.stringify(maker.make(context)));
    made.push(chapter.file);
    const head: Head = {
      file: chapter.file,
      own,
      asked: asked(),
      parts: makers.map(({ kind, inputs }) => [kind, inputs]),
    };
    return { ...head, line: Buffer.from([JSON.stringify(head), ...parts].join('\t')) };
  };
  const keptOf = (chapter: Chapter): Kept => {
    const known = now.get(chapter.file);
    if (known) return known;
    const own = prints.get(chapter.file) ?? '';
    const earlier = before.get(chapter.file);
    const holds =
      earlier?.own === own &&
      makers.every((maker) => indexOf(earlier, maker) >= 0) &&
      stillAnswered(course, edition, earlier.asked);
    const kept = holds ? earlier : make(chapter, own);
    now.set(chapter.file, kept);
    return kept;
  };
  return {
    of(maker, chapter) {
      const kept = keptOf(chapter);
      const part = partIn(kept, indexOf(kept, maker));
      if (comparesFresh())
        compareFresh(part, JSON.stringify(maker.make({ ...shared, chapter })), kept);
      return JSON.parse(part);
    },
    made: () => made,
    async save() {
      const all = course.chapters.map(keptOf);
      if (made.length === 0 && all.length === before.size) return;
      const content = all.flatMap(({ line }, index) => (index === 0 ? [line] : [newLine, line]));
      await writeSealed(cache, name, { sealedFor, content })
        .then(() => dropOldest(cache, 'parts-', mostCourses))
        // What cannot be kept is made again next time.
        .catch(() => {});
    },
  };
}

/** Of each chapter by its file: of its text, of the settings, and of what the whole course adds to its blocks. */
function printChapters(
  { chapters, settings }: Course,
  print: (file: string) => string,
): ReadonlyMap<string, string> {
  const all = JSON.stringify(settings);
  return new Map(
    chapters.map(({ file, blocks }) => {
      const added = blocks.flatMap((block): unknown[] => {
        if (block.kind === 'pattern') return [block.matches];
        return block.kind === 'game' ? [block.leaves ?? null] : [];
      });
      return [file, hashOf(JSON.stringify([all, print(file), added]))];
    }),
  );
}

const newLine = Buffer.from('\n');

function linesOf(content: Buffer | undefined): Kept[] {
  const lines: Kept[] = [];
  if (content === undefined || content.length === 0) return lines;
  for (let start = 0; start <= content.length; ) {
    const next = content.indexOf('\n', start);
    const end = next < 0 ? content.length : next;
    const line = content.subarray(start, end);
    const head = JSON.parse(line.toString('utf8', 0, line.indexOf('\t'))) as Head;
    lines.push({ ...head, line });
    start = end + 1;
  }
  return lines;
}

/** Where a part stands behind the head; -1 where it was made of something else. */
function indexOf({ parts }: Head, maker: PartMaker<unknown>): number {
  return parts.findIndex(([kind, inputs]) => kind === maker.kind && inputs === maker.inputs);
}

function partIn({ line, file }: Kept, index: number): string {
  if (index < 0) throw new Error(`a part of ${file} was asked for that nobody makes`);
  let start = line.indexOf('\t') + 1;
  for (let left = index; left > 0; left--) start = line.indexOf('\t', start) + 1;
  const end = line.indexOf('\t', start);
  return line.toString('utf8', start, end < 0 ? line.length : end);
}

/** @throws Error where a part that was kept is not what is made now: a fault of this file. */
function compareFresh(part: string, fresh: string, { file }: Head): void {
  if (part === fresh) return;
  let at = 0;
  while (part[at] === fresh[at]) at++;
  const around = (text: string) => text.slice(Math.max(0, at - 80), at + 160);
  throw new Error(
    `a part of ${file} differs from a fresh one:\n  kept:  …${around(part)}\n  fresh: …${around(fresh)}`,
  );
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 22);
}
