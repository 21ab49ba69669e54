import { fileURLToPath } from 'node:url';
import { build } from './build.ts';

/** `linewright handbook`: the handbook as a site, to be read here or published. */
export async function handbook({ out }: { readonly out: string }): Promise<number> {
  const folder = fileURLToPath(new URL('../../content/handbook', import.meta.url));
  return build(folder, { out });
}
