import type { Root, Text, Yaml } from 'mdast';
import type * as z from 'zod';
import type { FileText } from '../blocks/fence.ts';
import type { CourseProblem } from '../types.ts';
import { readYaml } from '../yaml/read-yaml.ts';

export interface FrontMatterOptions<Schema extends z.ZodObject> {
  readonly schema: Schema;
  /** What the file is, for messages: `chapter`. */
  readonly what: string;
  readonly demand: 'required' | 'optional';
  readonly report: (problem: Omit<CourseProblem, 'rule'>) => void;
}

export interface FrontMatter<Sound> {
  /** The fields that are valid, each by itself. */
  readonly sound: Sound;
  /** The text under a name as nodes with their places. */
  readonly textOf: (name: string) => readonly Text[];
}

/** Takes the front matter out of a file's tree and reads it. What is missing or wrong is reported. */
export function readFrontMatter<Schema extends z.ZodObject>(
  body: Root,
  file: FileText,
  { schema, what, demand, report }: FrontMatterOptions<Schema>,
): FrontMatter<Partial<z.output<Schema>>> {
  const none = { sound: {}, textOf: () => [] };
  const first = body.children[0];
  if (first?.type !== 'yaml') {
    if (demand === 'optional') return none;
    const dashes = /^\s*---[ \t]*$/m.exec(file.text);
    const opened = dashes && file.text.slice(0, dashes.index).trim() === '' ? dashes : undefined;
    const start = opened ? opened.index + opened[0].search(/-/) : 0;
    report({
      place: {
        file: file.file,
        start: file.pointAt(start),
        end: file.pointAt(opened ? start + 3 : 0),
      },
      message: !opened
        ? `This ${what} has no front matter, so it has no title.`
        : start > 0
          ? 'The front matter does not begin in the first line, so it is not read.'
          : 'The front matter is opened here and never closed.',
      hint: !opened
        ? 'Begin the file with three lines: `---`, `title: …`, `---`.'
        : start > 0
          ? 'Remove what stands before it, also empty lines and spaces.'
          : 'Put a line `---` after its last line.',
    });
    return none;
  }
  body.children.shift();
  const contentStart = frontMatterStart(first, file);
  const yaml = readYaml(
    {
      file: file.file,
      text: first.value,
      pointAt: (offset) => file.pointAt(contentStart + offset),
      name: 'the front matter',
    },
    schema,
  );
  for (const problem of yaml.problems) report(problem);
  return yaml;
}

/** The offset of the line after `---`. */
function frontMatterStart(node: Yaml, file: FileText): number {
  const line = file.pointAt(node.position?.start.offset ?? 0).line;
  return file.lineStarts[line] ?? 0;
}
