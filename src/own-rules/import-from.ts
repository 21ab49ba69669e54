import * as module from 'node:module';
import type { SourceFile } from '../read/index.ts';

/** What the files of a course have as their address: nothing is read from the disk for them. */
export const scheme = 'course:///';

const exported = 'linewright/rules';

let sources: ReadonlyMap<string, string> | undefined;

/**
 * Imports a file of `rules/` from its text. It may import files beside it, `linewright/rules` and modules of Node:
 * what else it would bring is not part of the course, and no print of the course's code would know of it.
 * @param api the address of `linewright/rules`.
 * @throws whatever the file throws, and Error for what it may not import.
 */
export async function importFrom(
  { files, file }: { readonly files: readonly SourceFile[]; readonly file: string },
  api: string,
): Promise<{ readonly default?: unknown }> {
  if (sources === undefined) registerSources(api);
  sources = new Map(files.map(({ path, text }) => [`${scheme}${path}`, text]));
  return import(`${scheme}${file}`);
}

function registerSources(api: string): void {
  // Node 22.15 and 23.5 brought it.
  if (!('registerHooks' in module)) {
    throw new Error(`rules of a course's own need Node 22.15 or newer; this is ${process.version}`);
  }
  module.registerHooks({
    resolve(specifier, context, next) {
      if (specifier === exported) return { url: api, shortCircuit: true };
      const isOwn = specifier.startsWith(scheme);
      if (!isOwn && !context.parentURL?.startsWith(scheme)) return next(specifier, context);
      if (module.isBuiltin(specifier)) return next(specifier, context);
      const url =
        isOwn || /^\.{1,2}\//.test(specifier) ? new URL(specifier, context.parentURL).href : '';
      if (sources?.has(url)) return { url, format: 'module', shortCircuit: true };
      throw new Error(
        `\`${specifier}\` cannot be imported: only \`${exported}\`, modules of Node and \`.mjs\` files of rules/ can`,
      );
    },
    load(url, context, next) {
      const source = sources?.get(url);
      return source === undefined
        ? next(url, context)
        : { format: 'module', source, shortCircuit: true };
    },
  });
}
