import {
  type CourseSettings,
  readTranslationSettings,
  type TranslationFiles,
} from '../read/index.ts';
import { languageTag } from './marks.ts';

/** The settings that are translated; one whose original has changed since holds until it is looked at. */
export function wordsOfSettings(
  { settings }: TranslationFiles,
  source: string,
): Partial<CourseSettings> {
  if (settings === undefined) return {};
  const { open, changed } = languageTag(source);
  const wordsOf = (text: string) => (text.startsWith(changed) ? text.slice(changed.length) : text);
  const said = Object.entries(readTranslationSettings(settings).words).flatMap(([name, value]) => {
    if (Array.isArray(value)) {
      const isOpen = value.some((text) => String(text).startsWith(open));
      return isOpen ? [] : [[name, value.map(String).map(wordsOf)]];
    }
    if (typeof value !== 'string') return [[name, value]];
    return value.startsWith(open) ? [] : [[name, wordsOf(value)]];
  });
  return Object.fromEntries(said);
}
