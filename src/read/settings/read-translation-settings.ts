import * as z from 'zod';
import { titleText } from '../front-matter/front-texts.ts';
import type { CourseProblem, CourseSettings, SourceFile } from '../types.ts';
import { readYamlFile } from '../yaml/read-yaml-file.ts';
import { teachings } from './read-settings.ts';
import { notationSetting, piecesSetting, text } from './setting-fields.ts';

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
  const { yaml, problems } = readYamlFile(written, schema, 'course-setting');
  const said = Object.entries(yaml.sound).filter(([, value]) => value !== undefined);
  return { words: Object.fromEntries(said), problems };
}
