import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type DeskScriptData, dataAttributes, deskFolder } from '../contract/index.ts';
import type { DeskPart } from './desk-door.ts';

const folder = fileURLToPath(new URL('../live/', import.meta.url));

/** The scripts and style sheets of the desk. */
export interface DeskFiles {
  /** The content of one; a part may have no style sheet. */
  read(name: string): Promise<Uint8Array | string | undefined>;
}

export function deskFiles(parts: readonly DeskPart[]): DeskFiles {
  const names = new Set(parts.flatMap(({ name }) => [`${name}.js`, `${name}.css`]));
  return {
    async read(name) {
      if (!names.has(name)) return undefined;
      const content = await readFile(path.join(folder, name)).catch(() => undefined);
      return content ?? (name.endsWith('.css') ? '' : undefined);
    },
  };
}

/**
 * A page with the scripts of the desk. They stand before its own, so that they see the page as it was served, before
 * any script has changed it.
 */
export function withDesk(
  page: Uint8Array | string,
  parts: readonly DeskPart[],
  data: DeskScriptData,
): string {
  const attributes = Object.entries(dataAttributes('desk', data))
    .map(([name, value]) => ` ${name}="${value}"`)
    .join('');
  const tags = parts.map(
    ({ name }) =>
      `<link rel="stylesheet" href="${data.root}${deskFolder}${name}.css">` +
      `<script src="${data.root}${deskFolder}${name}.js"${attributes} defer></script>`,
  );
  const html = typeof page === 'string' ? page : Buffer.from(page).toString('utf8');
  return html.replace('<title>', (title) => tags.join('') + title);
}
