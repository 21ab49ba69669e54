import { createHash } from 'node:crypto';

/** A UUID of version 5: the same name in the same space gives the same one (RFC 9562, 5.5). */
export function nameUuid(space: string, name: string): string {
  const bytes = createHash('sha1')
    .update(Buffer.from(space.replaceAll('-', ''), 'hex'))
    .update(name)
    .digest()
    .subarray(0, 16);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = bytes.toString('hex');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, '$1-$2-$3-$4-');
}
