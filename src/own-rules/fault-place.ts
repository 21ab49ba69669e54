import { createLocator, lineStarts, type Place, topOf } from '../diagnostics/index.ts';
import type { SourceFile } from '../read/index.ts';
import { scheme } from './import-from.ts';
import type { CodeFault } from './protocol.ts';
import { syntaxPlace } from './syntax-place.ts';

/** Where in a course's code an error arose: the innermost place of it in `rules/`, else the first line of the file. */
export function faultPlace(
  { stack }: CodeFault,
  file: string,
  files: readonly SourceFile[],
): Place {
  if (stack.startsWith('SyntaxError')) {
    const own = files.filter(({ path }) => path === file);
    for (const source of [...own, ...files]) {
      const at = syntaxPlace(source);
      if (at) return { file: source.path, start: at, end: at };
    }
  }
  // `at inChapter (course:///rules/a.mjs:12:9)`; one `at` a line, the innermost first.
  for (const [, path = '', line = '1', column = '1'] of stack.matchAll(places)) {
    const source = files.find((each) => each.path === decodeURI(path));
    if (source === undefined) continue;
    const offset = (lineStarts(source.text)[Number(line) - 1] ?? 0) + Number(column) - 1;
    const at = createLocator(source.text)(Math.min(offset, source.text.length));
    return { file: source.path, start: at, end: at };
  }
  return topOf(file);
}

const places = new RegExp(`${scheme}([^\\s:()]+):(\\d+)(?::(\\d+))?`, 'g');
