import { z } from 'astro/zod';

const color = z.enum(['white', 'black']);

/** A position of a chapter that its author gave a name. */
export const namedPosition = z.object({
  /** The author's name for it, as `:here[…]` gives it. */
  label: z.string(),
  /** The title for readers, else such as `after 7...Be7`. */
  words: z.string(),
  /** Where the course shows it. */
  href: z.string(),
  fen: z.string(),
  /** The side at the bottom of the board. */
  view: color,
  /** The position in a sentence, for those who do not see it. */
  alt: z.string(),
  /** The squares of the move that led there. */
  lastMove: z.object({ from: z.string(), to: z.string() }).optional(),
});

/** A move, the moves that go on from it, the main one first, and what it leads to. */
export interface MoveData {
  readonly san: string;
  /** Such as `e7e8q`. */
  readonly uci: string;
  /** The full-move number. */
  readonly number: number;
  readonly color: 'white' | 'black';
  readonly fen: string;
  /** Numeric annotation glyphs of the PGN standard. */
  readonly nags: readonly number[];
  readonly next: readonly MoveData[];
}

const move: z.ZodType<MoveData> = z.lazy(() =>
  z.object({
    san: z.string(),
    uci: z.string(),
    number: z.number(),
    color,
    fen: z.string(),
    nags: z.array(z.number()).readonly(),
    next: z.array(move).readonly(),
  }),
);

/** What an entry of `courseLoader` has as its data. */
export const chapterSchema = z.object({
  title: z.string(),
  summary: z.string().optional(),
  /** Place in the course, from 1. */
  order: z.number(),
  /** Where the course's own page of it stands. */
  href: z.string(),
  course: z.object({
    title: z.string(),
    side: z.enum(['white', 'black', 'both']),
    language: z.string(),
    author: z.string().optional(),
  }),
  positions: z.array(namedPosition),
  lines: z.array(z.object({ fen: z.string(), view: color, moves: z.array(move) })),
  exercises: z.number(),
});

export type ChapterData = z.infer<typeof chapterSchema>;
