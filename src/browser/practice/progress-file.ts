import * as z from 'zod/mini';
import { hows, type Item } from './item.ts';

/** What a file of progress says of itself. */
const format = 'linewright practice progress';
const version = 1;

const day = z.int();
const count = z.int().check(z.minimum(0));
const itemSchema = z.object({
  key: z.string().check(z.regex(/^[1-8KQRBNPkqrbnp/]+ [wb] \S+ \S+$/)),
  advice: z.string().check(z.minLength(2), z.maxLength(10)),
  last: day,
  due: day,
  stability: z.number().check(z.positive()),
  difficulty: z.number().check(z.minimum(1), z.maximum(10)),
  answers: count,
  misses: count,
  at: z.number().check(z.minimum(0)),
  history: z.array(z.tuple([day, z.enum(hows)])),
});
const headSchema = z.object({
  format: z.literal(format),
  version: z.int(),
  course: z.string(),
  title: z.string(),
  count,
});
const bodySchema = z.object({ items: z.array(itemSchema) });

export interface ProgressCourse {
  readonly course: string;
  readonly title: string;
  readonly edition: string;
}

/** Progress as the text of a file. `now` in ms since 1970. */
export function makeProgressFile(
  { course, title, edition }: ProgressCourse,
  items: Iterable<Item>,
  now: number,
): string {
  const all = [...items];
  const saved = new Date(now).toISOString();
  const head = { format, version, course, title, edition, saved, count: all.length };
  return `${JSON.stringify({ ...head, items: all }, null, 1)}\n`;
}

/** What a file held, or why it is not taken: `other-course` names that course. */
export type ProgressRead =
  | { readonly items: readonly Item[] }
  | { readonly fault: 'not-progress' | 'cut-short' | 'newer' }
  | { readonly fault: 'other-course'; readonly title: string };

/** Reads the text of a file for a course. Nothing of a faulty file is taken. */
export function readProgressFile(text: string, course: string): ProgressRead {
  const data = parse(text);
  if (data === undefined) {
    return { fault: text.includes(`"format": "${format}"`) ? 'cut-short' : 'not-progress' };
  }
  const head = headSchema.safeParse(data).data;
  if (head === undefined) return { fault: 'not-progress' };
  if (head.version > version) return { fault: 'newer' };
  if (head.course !== course) return { fault: 'other-course', title: head.title };
  const body = bodySchema.safeParse(data).data;
  if (body === undefined) return { fault: 'not-progress' };
  if (body.items.length !== head.count) return { fault: 'cut-short' };
  return { items: body.items };
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}
