import { createHash } from 'node:crypto';

/**
 * Makes the keys of a chapter's blocks. A key is a hash of the block's own text, so edits elsewhere do not change it;
 * blocks with equal text are numbered.
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
