import * as z from 'zod';
import { createLocator } from '../diagnostics/index.ts';
import { cleanText } from './clean-text.ts';
import { titleText } from './front-texts.ts';
import { teachings } from './read-settings.ts';
import { readYaml } from './read-yaml.ts';
import { notationSetting, piecesSetting, text } from './setting-fields.ts';
import type { CourseProblem, CourseSettings, SourceFile } from './types.ts';

const schema = z.strictObject(
  {
    title: titleText('a text, the title of the course'),
    summary: text('a text').optional(),
    author: text('a text').optional(),
    for: text('a text').optional(),
    teaches: teachings.optional(),
    licence: text('a text').optional(),
    notation: notationSetting.optional(),
    pieces: piecesSetting.optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** Reads `translations/TAG/course.yaml`. */
export function readTranslationSettings(written: SourceFile): {
  readonly words: Partial<CourseSettings>;
  readonly problems: readonly CourseProblem[];
} {
  const problems: CourseProblem[] = [];
  const report = (problem: Omit<CourseProblem, 'rule'>) =>
    problems.push({ rule: 'course-setting', ...problem });
  const file = cleanText(written, report);
  const pointAt = createLocator(file.text);
  const yaml = readYaml({ file: file.path, text: file.text, pointAt, name: file.path }, schema);
  for (const problem of yaml.problems) report(problem);
  const said = Object.entries(yaml.sound).filter(([, value]) => value !== undefined);
  return { words: Object.fromEntries(said), problems };
}
