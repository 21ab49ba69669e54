import type { LineStore } from '../../files/index.ts';
import type { Course } from '../../model/index.ts';
import { printPart } from '../../render/index.ts';

/**
 * What the last build knew to hold of what is kept of the chapters. It is a line of its own, since a new face of the
 * course changes nothing in what most chapters give.
 */
export interface HeldParts {
  /** A print of all that the course shows beside the words of its chapters. */
  readonly face: string;
  /** Whether what is kept of a chapter was known to hold for this same face. @param kept a print of it. */
  isKnown(file: string, kept: string): boolean;
  /** For what held then: tells which chapters have the face that they had. */
  since(file: string, kept: string): ((chapter: string) => boolean) | undefined;
  /** Puts into the store what holds now. @param kept a print of what is kept of each chapter, by its file. */
  put(kept: ReadonlyMap<string, string>): void;
}

interface Held {
  readonly face: string;
  /** Print of what the course shows beside its chapters. */
  readonly around: string;
  /** In the order of the course: a chapter's file, its face, and the print of what is kept of it. */
  readonly chapters: readonly (readonly [file: string, face: string, kept: string])[];
}

/** The name of the line: that of no file. */
export const heldName = '';

/** @param faces print of what others may show of each chapter, in the order of the course. */
export function openHeld(
  store: LineStore,
  course: Course,
  faces: ReadonlyMap<string, string>,
): HeldParts {
  const around = printAround(course);
  const face = printPart(JSON.stringify([around, ...faces]));
  const line = store.get(heldName);
  const held = line && (JSON.parse(line.toString('utf8')) as Held);
  const before = new Map(held?.chapters.map(([file, ...prints]) => [file, prints]));
  // Where chapters came, went or changed places, numbers are others too.
  const isLikeBefore =
    held?.around === around && [...before.keys()].join('\n') === [...faces.keys()].join('\n');
  const isUnchanged = (chapter: string) => before.get(chapter)?.[0] === faces.get(chapter);
  const isHeld = (file: string, kept: string) => before.get(file)?.[1] === kept;
  return {
    face,
    isKnown: (file, kept) => held?.face === face && isHeld(file, kept),
    since: (file, kept) => (isLikeBefore && isHeld(file, kept) ? isUnchanged : undefined),
    put(kept) {
      const chapters = [...faces].map(([file, own]) => [file, own, kept.get(file) ?? ''] as const);
      const now = Buffer.from(JSON.stringify({ face, around, chapters } satisfies Held));
      if (!line?.equals(now)) store.set(heldName, now);
    },
  };
}

function printAround({ settings, news, siblings = {}, theme }: Course): string {
  return printPart(JSON.stringify([settings, news, siblings, theme?.look]));
}
