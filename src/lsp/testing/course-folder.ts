import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A folder with a course in it, for servers that look for `course.yaml` on a disk. */
export function courseFolder(files: Readonly<Record<string, string>>) {
  const folder = mkdtempSync(path.join(tmpdir(), 'linewright-lsp-'));
  const write = (file: string, text: string) => {
    const full = path.join(folder, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
  };
  for (const [file, text] of Object.entries(files)) write(file, text);
  return {
    folder,
    write,
    remove: (file = '') => rmSync(path.join(folder, file), { recursive: true }),
  };
}

/** The position of a sign of a text as the protocol counts, in units of UTF-16. */
export function positionIn(text: string, words: string, add = 0) {
  const at = text.indexOf(words);
  if (at < 0) throw new Error(`${words} is not there`);
  const lines = text.slice(0, at + add).split('\n');
  return { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
}
