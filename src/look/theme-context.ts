import type { CssLocation, CssNode } from 'css-tree';
import { createLocator, type Place } from '../diagnostics/index.ts';
import type { ThemeProblem } from './types.ts';

/** What a theme may name of the course's files. */
export interface ThemeFiles {
  readonly media: ReadonlySet<string>;
  /** Why some of them are not published, by path. */
  readonly unfit: ReadonlyMap<string, Pick<ThemeProblem, 'message' | 'hint'>>;
}

/** What the readers of a theme's parts share. */
export interface ThemeContext {
  readonly text: string;
  readonly files: ThemeFiles;
  readonly placeOf: (start: number, end: number) => Place;
  readonly report: (at: Place, message: string, hint: string) => void;
}

export function makeContext(
  file: { readonly path: string; readonly text: string },
  files: ThemeFiles,
  problems: ThemeProblem[],
): ThemeContext {
  const pointAt = createLocator(file.text);
  return {
    text: file.text,
    files,
    placeOf: (start, end) => ({ file: file.path, start: pointAt(start), end: pointAt(end) }),
    report: (place, message, hint) => problems.push({ place, message, hint }),
  };
}

/** Where a node stands, without the white space around it. */
export function placeOfNode(
  context: ThemeContext,
  { loc }: { readonly loc?: CssLocation | null | undefined },
): Place {
  const start = loc?.start.offset ?? 0;
  const end = loc?.end.offset ?? start;
  const text = context.text.slice(start, end);
  const before = text.length - text.trimStart().length;
  const length = text.trim().length;
  return length === 0
    ? context.placeOf(start, end)
    : context.placeOf(start + before, start + before + length);
}

/** The children of a node that has a list of them. */
export function childrenOf(node: CssNode | null | undefined): CssNode[] {
  if (!node || !('children' in node) || !node.children) return [];
  return node.children.toArray() as CssNode[];
}
