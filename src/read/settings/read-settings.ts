import * as z from 'zod';
import type { PiecesLanguage } from '../../chess/index.ts';
import { type Place, severities } from '../../diagnostics/index.ts';
import { titleText } from '../front-matter/front-texts.ts';
import type { CourseProblem, CourseSettings, MissingId, SourceFile } from '../types.ts';
import { choicesOf } from '../yaml/choices.ts';
import type { YamlProblem, YamlResult } from '../yaml/read-yaml.ts';
import { readYamlFile } from '../yaml/read-yaml-file.ts';
import { findMissingId } from './missing-id.ts';
import {
  courseId,
  languageTag,
  notationSetting,
  piecesSetting,
  siteAddress,
  text,
} from './setting-fields.ts';

export interface ParsedSettings {
  readonly settings: CourseSettings;
  /** Whether the two required settings could be read. */
  readonly isWhole: boolean;
  /** Where each setting stands, by its path such as `rules.move-number`. */
  readonly places: Readonly<Record<string, Place>>;
  readonly missingId?: MissingId;
  readonly problems: readonly CourseProblem[];
}

const pawns = 'a number of pawns from 0 to 5, such as `0.8`';

const margin = z
  .number({ error: pawns })
  .min(0, { error: pawns })
  .max(5, { error: pawns })
  .optional();

const teaching = 'a list of one to nine texts, each on a line of its own behind `- `';

export const teachings = z
  .array(text('a text'), { error: teaching })
  // Not `min` and `max`, which measure a text as well.
  .refine(({ length }) => length >= 1 && length <= 9, { error: teaching });

const ownRule = 'the name of a file in rules/ that ends with `.mjs`, such as `reading-time.mjs`';

const margins = z.strictObject(
  { margin, bad: margin, reply: margin, equal: margin },
  { error: 'a list of margins, such as `margin: 0.8`, one a line' },
);

const picture = 'the name of a picture, such as `media/logo.svg`';

const mediaName = text(picture).transform((name) => name.replace(/^(?:\.\/)+/, ''));

const logoWords =
  'the name of a picture, such as `media/logo.svg`, or a list of `light`, `dark` and `cover` with one each';

const logos = z.strictObject(
  { light: mediaName, dark: mediaName.optional(), cover: mediaName.optional() },
  { error: logoWords },
);

const schema = z.strictObject(
  {
    title: titleText('a text, the title of the course'),
    id: courseId.optional(),
    side: z.enum(['white', 'black', 'both'], { error: '`white`, `black` or `both`' }),
    author: text('a text').optional(),
    summary: text('a text').optional(),
    language: languageTag.default('en'),
    site: siteAddress.optional(),
    licence: text('a text').optional(),
    rules: z
      .record(
        z.string(),
        z.enum([...severities, 'off'], { error: '`error`, `warning` or `off`' }),
        { error: 'a list of rule ids, each with `error`, `warning` or `off`' },
      )
      .default({}),
    'own-rules': z
      .array(
        z
          .string({ error: ownRule })
          .regex(/^[\p{L}\p{N}][\p{L}\p{N}._-]*\.mjs$/u, { error: ownRule }),
        {
          error: 'a list of files in rules/, each on a line of its own behind `- `',
        },
      )
      .optional(),
    notation: notationSetting.default('figurines'),
    pieces: piecesSetting.optional(),
    begins: text('the name of a position, as `:here[…]` gives it').optional(),
    cover: text('the name of a position, as `:here[…]` gives it').optional(),
    for: text('a text').optional(),
    teaches: teachings.optional(),
    logo: z
      .union([mediaName, logos], { error: logoWords })
      .transform((logo) =>
        typeof logo === 'string' ? { light: logo } : (withoutUndefined(logo) as typeof logo),
      )
      .optional(),
    icon: mediaName.optional(),
    card: mediaName.optional(),
    certified: text('the name of whoever has looked at the e-book').optional(),
    engine: margins.optional(),
  },
  { error: 'a list of settings, one `name: value` a line' },
);

/** What `course.yaml` may hold. */
export const settingChoices = choicesOf(schema);

/** What `engine` in `course.yaml` may hold. */
export const marginChoices = choicesOf(margins);

/** Defaults for settings that cannot be read, so that everything else is still checked. */
const fallback: CourseSettings = {
  title: 'Untitled course',
  side: 'both',
  language: 'en',
  rules: {},
  ownRules: [],
  notation: 'figurines',
};

/** Reads `course.yaml`. */
export function readSettings(written: SourceFile): ParsedSettings {
  const { yaml, file, pointAt, problems } = readYamlFile(written, schema, 'course-setting');
  problems.push(
    ...lostRule(yaml).map((problem) => ({ rule: 'course-setting' as const, ...problem })),
  );
  const { 'own-rules': ownRules = [], ...sound } = yaml.sound;
  const settings: CourseSettings = {
    ...fallback,
    ...withoutUndefined(sound),
    ownRules: [...new Set(ownRules)],
  };
  const places: Record<string, Place> = {};
  for (const key of Object.keys(settings)) places[key] = yaml.placeOf(key);
  for (const on of Object.keys(settings.logo ?? {})) {
    if (yaml.hasKey('logo', on)) places[`logo.${on}`] = yaml.placeOf('logo', on);
  }
  for (const [at, file] of ownRules.entries()) {
    places[`own-rules.${file}`] = yaml.placeOf('own-rules', at);
  }
  for (const rule of Object.keys(settings.rules)) {
    places[`rules.${rule}`] = yaml.keyPlaceOf('rules', rule);
  }
  const title = yaml.sound.title === undefined ? undefined : places.title;
  const missingId = findMissingId(file, title, pointAt);
  const isWhole = yaml.sound.title !== undefined && yaml.sound.side !== undefined;
  return { settings, isWhole, places, problems, ...(missingId && { missingId }) };
}

/** Reports `__proto__`, which the schema of a record ignores; other names are checked as rules. */
function lostRule({ hasKey, keyPlaceOf }: YamlResult<unknown>): YamlProblem[] {
  const name = '__proto__';
  if (!hasKey('rules', name)) return [];
  return [
    {
      place: keyPlaceOf('rules', name),
      message: `There is no rule \`${name}\`.`,
      hint: 'Take this line out.',
    },
  ];
}

const knownPieces = new WeakMap<SourceFile, PiecesLanguage | undefined>();

/** The piece letters, the only setting that chapters are read with. */
export function piecesOf(settings: SourceFile): PiecesLanguage | undefined {
  // Few courses set it, and this is called often.
  if (!settings.text.includes('pieces')) return undefined;
  if (!knownPieces.has(settings)) {
    knownPieces.set(settings, readSettings(settings).settings.pieces);
  }
  return knownPieces.get(settings);
}

/** The settings of a folder that has no `course.yaml`. */
export function missingSettings(): ParsedSettings {
  return { settings: fallback, isWhole: false, places: {}, problems: [] };
}

function withoutUndefined(value: object): object {
  return Object.fromEntries(Object.entries(value).filter(([, entry]) => entry !== undefined));
}
