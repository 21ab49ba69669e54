import type * as z from 'zod';
import { createLocator } from '../../diagnostics/index.ts';
import { cleanText } from '../files/clean-text.ts';
import type { CourseProblem, SourceFile } from '../types.ts';
import { readYaml } from './read-yaml.ts';

/**
 * Reads a file that is YAML as a whole, such as `course.yaml`.
 * @param rule that reports its problems.
 * @returns the YAML, the file without unprintable characters, and the problems of both, to which the caller may add.
 */
export function readYamlFile<Schema extends z.ZodObject>(
  written: SourceFile,
  schema: Schema,
  rule: CourseProblem['rule'],
) {
  const problems: CourseProblem[] = [];
  const file = cleanText(written, (problem) => problems.push({ rule, ...problem }));
  const pointAt = createLocator(file.text);
  const yaml = readYaml({ file: file.path, text: file.text, pointAt, name: file.path }, schema);
  problems.push(...yaml.problems.map((problem) => ({ rule, ...problem })));
  return { yaml, file, pointAt, problems };
}
