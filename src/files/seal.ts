import { createHmac } from 'node:crypto';

export const sealLength = 32;

/**
 * What stands in an entry of a cache to tell that it is whole and is the entry of this name. Anybody
 * can make a seal without a secret: then it keeps out mishaps, not someone who may write to the
 * cache. With a secret it keeps out both.
 * @param secret unless given, the variable LINEWRIGHT_CACHE_KEY.
 */
export function sealOf(
  name: string,
  content: string | Uint8Array | Iterable<Uint8Array>,
  secret: string = process.env.LINEWRIGHT_CACHE_KEY ?? '',
): Buffer {
  const seal = createHmac('sha256', secret).update(`${name}\n`);
  const isWhole = typeof content === 'string' || content instanceof Uint8Array;
  for (const piece of isWhole ? [content] : content) seal.update(piece);
  return seal.digest();
}
