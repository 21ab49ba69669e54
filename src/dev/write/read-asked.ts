import * as z from 'zod';
import type { LookAsked, WriteAsked } from '../../contract/index.ts';
import { DeskRefusal } from '../desk-door.ts';

const san = z.string().min(2).max(12);
const drawn = z.strictObject({
  kind: z.enum(['mark', 'plan', 'threat', 'guard']),
  item: z.string().regex(/^[a-h][1-8](?:-[a-h][1-8])?$/),
});
const words = {
  comment: z.string().max(20_000).optional(),
  name: z.string().max(100).optional(),
  title: z.string().max(200).optional(),
  same: z.string().max(100).optional(),
  claims: z.array(z.string().max(500)).max(50).optional(),
  drawn: z.array(drawn).max(100).optional(),
};
const nag = z.int().min(1).max(255);
const moves = z
  .array(
    z.strictObject({
      san,
      glyphs: z.array(nag).max(8).optional(),
      option: z.boolean().optional(),
      ...words,
    }),
  )
  .min(1)
  .max(200);
const place = {
  version: z.int(),
  chapter: z.string().max(300),
  at: z.string().max(300),
};
const looks = z.strictObject({
  ...place,
  moves: z.array(san).max(200),
  shown: z.int().min(0).max(200).optional(),
});
const writes = z.strictObject({
  ...place,
  text: z.string().max(100),
  to: z.string().max(300).optional(),
  change: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('line'), moves }),
    z.strictObject({ kind: z.literal('words'), ...words }),
    z.strictObject({ kind: z.literal('glyph'), nag }),
    z.strictObject({ kind: z.literal('draw'), draw: drawn.shape.kind, item: drawn.shape.item }),
    z.strictObject({
      kind: z.literal('answer'),
      list: z.enum(['answer', 'also', 'wrong']),
      moves,
    }),
  ]),
});

/** @throws DeskRefusal */
export const readLook = (asked: unknown): LookAsked => read(looks, asked);

/** @throws DeskRefusal */
export const readWrite = (asked: unknown): WriteAsked => read(writes, asked);

function read<Output>(schema: z.ZodType<Output>, asked: unknown): Output {
  const result = schema.safeParse(asked);
  if (result.success) return result.data;
  throw new DeskRefusal('That is nothing that can be written into a chapter.');
}
