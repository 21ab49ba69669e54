import * as z from 'zod';
import type { Place } from '../../diagnostics/index.ts';
import { titleText } from '../front-matter/front-texts.ts';
import {
  courseId,
  languageTag,
  notationSetting,
  siteAddress,
  text,
} from '../settings/setting-fields.ts';
import type { CourseProblem, CourseSettings, SourceFile } from '../types.ts';
import { readYamlFile } from '../yaml/read-yaml-file.ts';

/** The settings of a shelf. */
export const shelfFile = 'shelf.yaml';

/** What `shelf.yaml` says of several courses that make one site. */
export interface ShelfSettings {
  readonly title: string;
  /** Names the shelf through all its editions; made from the title unless given. */
  readonly id?: string;
  readonly author?: string;
  readonly summary?: string;
  /** Of the shelf's own pages, as BCP 47. */
  readonly language: string;
  /** Address that the shelf will be published at, without a final `/`. */
  readonly site?: string;
  readonly licence?: string;
  /** How the shelf's own pages write moves. */
  readonly notation: CourseSettings['notation'];
}

/** A folder as `courses` names it. */
export interface FolderNamed {
  readonly written: string;
  readonly place: Place;
}

export interface ParsedShelfSettings {
  readonly settings: ShelfSettings;
  /** Whether title and courses could be read. */
  readonly isWhole: boolean;
  readonly folders: readonly FolderNamed[];
  readonly problems: readonly CourseProblem[];
}

/** Defaults for settings that cannot be read. */
export const namelessShelf: ShelfSettings = {
  title: 'Untitled shelf',
  language: 'en',
  notation: 'figurines',
};

const folders =
  'a list of one to ninety-nine course folders, each on a line of its own behind `- `';

const schema = z.strictObject(
  {
    title: titleText('a text, the title of the shelf'),
    courses: z
      .array(text('the folder of a course'), { error: folders })
      // Not `min` and `max`, which measure a text as well.
      .refine(({ length }) => length >= 1 && length <= 99, { error: folders }),
    id: courseId.optional(),
    author: text('a text').optional(),
    summary: text('a text').optional(),
    language: languageTag.default('en'),
    site: siteAddress.optional(),
    licence: text('a text').optional(),
    notation: notationSetting.default('figurines'),
  },
  { error: 'a list of settings, one `name: value` a line' },
);

/** Reads `shelf.yaml`; pure. `placeCourses` checks whether its folders are courses. */
export function readShelfSettings(written: SourceFile): ParsedShelfSettings {
  const { yaml, problems } = readYamlFile(written, schema, 'shelf-setting');
  const { courses = [], ...sound } = yaml.sound;
  const given = Object.fromEntries(
    Object.entries(sound).filter(([, entry]) => entry !== undefined),
  );
  return {
    settings: { ...namelessShelf, ...given },
    isWhole: yaml.sound.title !== undefined && yaml.sound.courses !== undefined,
    folders: courses.map((folder, index) => ({
      written: folder,
      place: yaml.placeOf('courses', index),
    })),
    problems,
  };
}
