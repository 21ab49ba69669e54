import { fileURLToPath } from 'node:url';
import { build } from './build.ts';

/** `linewright handbook`: builds the handbook as a site, to read here or to publish. */
export async function handbook({ out }: { readonly out: string }): Promise<number> {
  const folder = fileURLToPath(new URL('../../content/handbook', import.meta.url));
  return build(folder, { out });
}
