import { rules } from '../../check/index.ts';
import type { Course } from '../../model/index.ts';
import {
  type Choices,
  chapterChoices,
  marginChoices,
  pageChoices,
  settingChoices,
} from '../../read/index.ts';
import { settingWords } from '../words.ts';
import { labelOffers } from './directives.ts';
import { CompletionItemKind, type Offer, type Offers } from './item.ts';

/** Where a cursor stands in lines of `name: value`. */
export interface YamlCursor {
  /** The setting whose value is being typed; of a list, the one that it belongs to. */
  readonly key?: string;
  /** The setting that this line is indented under. */
  readonly under?: string;
  /** What is typed of the name or of the value. */
  readonly typed: string;
  /** Names that the lines have already. */
  readonly used: ReadonlySet<string>;
}

/** Finds where the end of `before` stands; `lines` is all of the text that it is the beginning of. */
export function yamlCursor(before: string, lines: string): YamlCursor {
  const all = before.split(/\r\n?|\n/);
  const line = all.at(-1) ?? '';
  const indent = /^\s*/.exec(line)?.[0].length ?? 0;
  const used = new Set(
    [...lines.matchAll(/^\s*([\w-]+):/gm)].flatMap(([, name]) => (name ? [name] : [])),
  );
  const above = all
    .slice(0, -1)
    .findLast((one) => /^\s*[\w-]+:/.test(one) && (/^\s*/.exec(one)?.[0].length ?? 0) < indent);
  const under = above === undefined ? undefined : /^\s*([\w-]+):/.exec(above)?.[1];
  const valued = /^\s*([\w-]+):\s*["']?(.*)$/.exec(line);
  const around = under === undefined ? {} : { under };
  if (valued) {
    const [, key = '', typed = ''] = valued;
    return { key, typed, used, ...around };
  }
  const item = /^\s*-\s+["']?(.*)$/.exec(line);
  if (item) {
    const list = all.findLast((one) => /^\s*[\w-]+:\s*$/.test(one));
    const key = list && /^\s*([\w-]+):/.exec(list)?.[1];
    return { ...(key !== undefined && { key }), typed: item[1] ?? '', used };
  }
  return { typed: line.trimStart(), used, ...around };
}

export function keyOffers(
  choices: Choices,
  { typed, used }: YamlCursor,
  offset: number,
  words: Readonly<Record<string, string>> = settingWords,
): Offers {
  const offers = Object.keys(choices)
    .filter((name) => !used.has(name) || name === typed)
    .map(
      (label): Offer => ({
        label,
        kind: CompletionItemKind.Property,
        text: `${label}: $0`,
        words: words[label],
      }),
    );
  return { start: offset - typed.length, offers };
}

export function wordOffers(words: readonly string[], start: number): Offers {
  return {
    start,
    offers: words.map((label) => ({ label, kind: CompletionItemKind.EnumMember })),
  };
}

/** Settings of `course.yaml` and their values. */
export function settingOffers(
  text: string,
  offset: number,
  course: Course | undefined,
): Offers | undefined {
  const cursor = yamlCursor(text.slice(0, offset), text);
  const { key, under, typed } = cursor;
  const start = offset - typed.length;
  if (key === undefined) {
    if (under === 'rules') return { start, offers: ruleNames() };
    return keyOffers(under === 'engine' ? marginChoices : settingChoices, cursor, offset);
  }
  if (under === 'rules') return wordOffers(settingChoices.rules ?? [], start);
  if (key === 'begins' || key === 'cover') {
    return course && { start, offers: labelOffers(course) };
  }
  const words = key === 'rules' ? [] : (settingChoices[key] ?? []);
  return words.length > 0 ? wordOffers(words, start) : undefined;
}

function ruleNames(): Offer[] {
  return rules
    .filter(({ always }) => !always)
    .map(({ id, finds }) => ({
      label: id,
      kind: CompletionItemKind.Property,
      text: `${id}: $0`,
      words: finds,
    }));
}

/** The front matter of a chapter, or of a page. */
export function frontMatterOffers(
  before: string,
  text: string,
  offset: number,
  isPage: boolean,
): Offers | undefined {
  const choices = isPage ? pageChoices : chapterChoices;
  const cursor = yamlCursor(before, text);
  if (cursor.key === undefined) return keyOffers(choices, cursor, offset);
  const words = choices[cursor.key] ?? [];
  return words.length > 0 ? wordOffers(words, offset - cursor.typed.length) : undefined;
}
