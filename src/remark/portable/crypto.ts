/** What the bundle for browsers takes for `node:crypto`: SHA-256 alone, with the same answers. */
import { sha256 } from '@noble/hashes/sha2.js';

interface Hash {
  update(text: string): Hash;
  copy(): Hash;
  digest(encoding: 'hex' | 'base64url'): string;
}

export function createHash(name: string): Hash {
  if (name !== 'sha256') throw new Error(`no hash ${name} here`);
  return hashOf(sha256.create());
}

function hashOf(state: ReturnType<typeof sha256.create>): Hash {
  const hash: Hash = {
    update(text) {
      state.update(new TextEncoder().encode(text));
      return hash;
    },
    copy: () => hashOf(state.clone()),
    digest(encoding) {
      const bytes = state.digest();
      if (encoding === 'hex') {
        return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
      }
      const plain = btoa(String.fromCharCode(...bytes));
      return plain.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
    },
  };
  return hash;
}
