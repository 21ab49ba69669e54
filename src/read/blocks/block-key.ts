import { createHash } from 'node:crypto';

/**
 * Makes the keys of a chapter's blocks. A key is made of the block's own text, so that what is inserted,
 * moved or taken out elsewhere leaves it as it is; of blocks with the same text the later ones are counted.
 */
export function createBlockKeys(): (text: string) => string {
  const given = new Map<string, number>();
  return (text) => {
    const hash = createHash('sha256').update(text).digest('base64url').slice(0, 10);
    const count = (given.get(hash) ?? 0) + 1;
    given.set(hash, count);
    return count === 1 ? hash : `${hash}.${count}`;
  };
}
