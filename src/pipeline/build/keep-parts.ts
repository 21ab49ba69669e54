import path from 'node:path';
import { codeHash, type LineStore, openLineStore, tabbed } from '../../files/index.ts';
import { type Chapter, type Course, documentsOf } from '../../model/index.ts';
import {
  type AskedOfCourse,
  contextOf,
  type PartMaker,
  type Parts,
  printPart,
  recordAsked,
  stillAnswered,
} from '../../render/index.ts';
import type { SiteMemory } from '../../site/index.ts';
import { comparesFresh } from '../../workspace/index.ts';
import { heldName, openHeld } from './held-parts.ts';

/** The parts of the chapters of a course, most of them as an earlier build made them. */
export interface KeptParts extends Parts {
  /**
   * A print of all that the course shows beside the words of its chapters: its settings, its news, and of each chapter
   * what others may show of it.
   */
  readonly face: string;
  /** `SiteMemory.print` */
  readonly print: SiteMemory['print'];
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
  /** `CurrentCourse.print` */
  readonly print: (file: string) => string;
  /** `CurrentCourse.face` */
  readonly face: (file: string) => string;
  /** All that will be asked for: a chapter's parts are made together, of one document. */
  readonly makers: readonly PartMaker<unknown>[];
}

/** What is kept of a chapter: JSON values in a line with tabs between them, which JSON has in no value. */
interface Head {
  /** Print of the chapter. */
  readonly own: string;
  /** Print of what others may show of it. */
  readonly face: string;
  /** Print of what the whole course adds to its blocks; empty where it has none to which anything is added. */
  readonly added: string;
  /** Print of the questions that were asked, and of their answers. */
  readonly asked: string;
  /** The edition of the course, where making it looked at the course itself. */
  readonly edition?: string;
  /** What follows: the questions that were asked, then a part each. */
  readonly parts: readonly (readonly [kind: string, inputs: string, print: string])[];
  /** How long each of these is, in bytes. */
  readonly lengths: readonly number[];
}

interface Kept extends Head {
  /** A print of the head, and so of all that follows it. */
  readonly print: string;
  /** Gives a part of what follows the head: what a long course shows would fill the memory. */
  readonly rest: (start: number, end: number) => Buffer;
}

const mostCourses = 20;

/**
 * Keeps what is made of each chapter, with every answer that making it took from the rest of the course. A part is
 * taken while chapter and answers are as they were; a damaged file is as good as none. As long as the course has
 * the same face, no question is asked: the answers follow from that. Nor is what was asked of one chapter alone, as long as
 * that has the same face.
 */
export async function keepParts(course: Course, options: KeepPartsOptions): Promise<KeptParts> {
  const { cache, folder, makers } = options;
  const name = `parts-${printPart(path.resolve(folder))}`;
  const sealedFor = await codeHash();
  const store = openLineStore(cache, name, { sealedFor, mostStores: mostCourses });
  const before = new Map<string, Kept>();
  const documents = documentsOf(course);
  for (const { file } of documents) {
    const line = store.get(file);
    if (line !== undefined) before.set(file, readLine(line));
  }
  const prints = ownPrints(course, options.print);
  const faces = new Map<string, string>();
  for (const [file, own] of prints) {
    const earlier = before.get(file);
    faces.set(file, earlier?.own === own ? earlier.face : options.face(file));
  }
  const held = openHeld(store, course, faces);
  const edition = printPart(JSON.stringify([...prints]));
  const shared = contextOf(course);
  const now = new Map<string, Kept>();
  const made: string[] = [];

  const make = (chapter: Chapter, own: string, earlier: Kept | undefined): Kept => {
    const isKnown = earlier && held.isKnown(chapter.file, earlier.print);
    const answers = isKnown ? askedIn(earlier) : [];
    const { context, asked } = recordAsked(shared, chapter, edition, answers);
    const parts = makers.map((maker) => JSON.stringify(maker.make(context)));
    const questions = asked();
    const values = [JSON.stringify(questions), ...parts];
    made.push(chapter.file);
    const head: Head = {
      own,
      face: faces.get(chapter.file) ?? '',
      added: printAdded(chapter),
      asked: printPart(values[0] ?? ''),
      ...(questions.some(([kind]) => kind === 'course') && { edition }),
      parts: makers.map(({ kind, inputs }, at) => [kind, inputs, printPart(parts[at] ?? '')]),
      lengths: values.map((value) => Buffer.byteLength(value)),
    };
    return keep(store, chapter.file, head, values);
  };
  const holds = (chapter: Chapter, earlier: Kept): boolean => {
    if (makers.some((maker) => indexOf(earlier, maker) < 0)) return false;
    if ((earlier.edition ?? edition) !== edition) return false;
    const { added, print } = earlier;
    if (held.isKnown(chapter.file, print)) return true;
    return (
      (added === '' || added === printAdded(chapter)) &&
      stillAnswered(course, edition, askedIn(earlier), held.since(chapter.file, print))
    );
  };
  const keptOf = (chapter: Chapter): Kept => {
    const { file } = chapter;
    const known = now.get(file);
    if (known) return known;
    const own = prints.get(file) ?? '';
    const earlier = before.get(file);
    const isKept = earlier?.own === own && holds(chapter, earlier);
    const kept = isKept ? earlier : make(chapter, own, earlier);
    now.set(file, kept);
    return kept;
  };
  return {
    face: held.face,
    of(maker, chapter) {
      const kept = keptOf(chapter);
      const part = partIn(kept, indexOf(kept, maker));
      if (comparesFresh()) {
        const fresh = JSON.stringify(maker.make({ ...shared, chapter }));
        compareFresh(part, fresh, chapter.file);
      }
      return JSON.parse(part);
    },
    print(maker, chapter) {
      const kept = keptOf(chapter);
      return kept.parts[indexOf(kept, maker)]?.[2] ?? '';
    },
    made: () => made,
    async save() {
      held.put(new Map(documents.map((document) => [document.file, keptOf(document).print])));
      await store.save(new Set([heldName, ...prints.keys()]));
    },
  };
}

/** Of each chapter and page by its file: of its text and of the settings. */
function ownPrints(course: Course, print: (file: string) => string): ReadonlyMap<string, string> {
  const all = JSON.stringify(course.settings);
  const ownOf = (file: string) => printPart(JSON.stringify([all, print(file)]));
  return new Map(documentsOf(course).map(({ file }) => [file, ownOf(file)]));
}

function printAdded({ blocks }: Chapter): string {
  const added = blocks.flatMap((block): unknown[] => {
    if (block.kind === 'pattern') return [block.matches];
    return block.kind === 'game' ? [block.leaves ?? null] : [];
  });
  return added.length === 0 ? '' : printPart(JSON.stringify(added));
}

function keep(store: LineStore, file: string, head: Head, rest: readonly string[]): Kept {
  const text = JSON.stringify(head);
  store.set(file, tabbed([text, ...rest]));
  return {
    ...head,
    print: printPart(text),
    rest: restIn(store, file, Buffer.byteLength(text) + 1),
  };
}

function readLine(line: Buffer): Kept {
  const tab = line.indexOf('\t');
  const head = JSON.parse(line.toString('utf8', 0, tab)) as Head;
  const print = printPart(line.toString('utf8', 0, tab));
  const rest = line.subarray(tab + 1);
  return { ...head, print, rest: (start, end) => rest.subarray(start, end) };
}

function restIn(store: LineStore, file: string, begin: number): Kept['rest'] {
  return (start, end) => {
    const part = store.get(file, begin + start, begin + end);
    if (part === undefined) throw new Error(`the parts of ${file} are gone`);
    return part;
  };
}

/** Which of the parts it is; -1 where it was made of something else. */
function indexOf({ parts }: Head, maker: PartMaker<unknown>): number {
  return parts.findIndex(([kind, inputs]) => kind === maker.kind && inputs === maker.inputs);
}

function askedIn(kept: Kept): readonly AskedOfCourse[] {
  return JSON.parse(valueIn(kept, 0)) as AskedOfCourse[];
}

function partIn(kept: Kept, index: number): string {
  if (index < 0) throw new Error('a part was asked for that nobody makes');
  return valueIn(kept, index + 1);
}

function valueIn({ lengths, rest }: Kept, index: number): string {
  const start = lengths.slice(0, index).reduce((sum, length) => sum + length + 1, 0);
  return rest(start, start + (lengths[index] ?? 0)).toString('utf8');
}

/** @throws Error where a part that was kept is not what is made now: a fault of this file. */
function compareFresh(part: string, fresh: string, file: string): void {
  if (part === fresh) return;
  let at = 0;
  while (part[at] === fresh[at]) at++;
  const around = (text: string) => text.slice(Math.max(0, at - 80), at + 160);
  throw new Error(
    `a part of ${file} differs from a fresh one:\n  kept:  …${around(part)}\n  fresh: …${around(fresh)}`,
  );
}
