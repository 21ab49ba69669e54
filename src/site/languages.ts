import type { CheckedCourse } from '../check/index.ts';
import { documentsOf } from '../model/index.ts';
import type { SiteFrame, SiteLanguage } from './site-data.ts';

/** The languages that a course is published in; undefined for one alone. */
export function siteLanguages(
  original: CheckedCourse,
  others: readonly { readonly tag: string; readonly checked: CheckedCourse }[],
): readonly SiteLanguage[] | undefined {
  return languagesOf(
    original.course.settings.language,
    others.map(({ tag, checked: { course } }) => ({
      tag,
      lacks: documentsOf(course).filter(({ language }) => language !== undefined),
    })),
  );
}

/**
 * @param language of the original.
 * @param others with what is not translated into them.
 */
export function languagesOf(
  language: string,
  others: readonly { readonly tag: string; readonly lacks: readonly { readonly id: string }[] }[],
): readonly SiteLanguage[] | undefined {
  if (others.length === 0) return undefined;
  return [
    { tag: language, name: ownName(language), folder: '', lacks: [] },
    ...others.map(({ tag, lacks }) => ({
      tag,
      name: ownName(tag),
      folder: `${tag}/`,
      lacks: lacks.map(({ id }) => `${id}.html`),
    })),
  ];
}

/** A language's own name: `Deutsch`. */
export function ownName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language' }).of(tag) ?? tag;
  return name.charAt(0).toLocaleUpperCase(tag) + name.slice(1);
}

/** The same page in a language that the course is published in. */
export interface PageInLanguage extends Pick<SiteLanguage, 'tag' | 'name'> {
  /** Relative to the page. */
  readonly href: string;
  /** Absolute, if the site's address is known. */
  readonly address: string;
  /** Whether it is the page itself. */
  readonly isHere: boolean;
  /** Whether its words are in that language. */
  readonly isTranslated: boolean;
}

/**
 * A page in all languages of its course, the original first; none where it has one language.
 * @param page path in the site of its own language.
 */
export function pageInLanguages(
  { languages = [], language, site }: SiteFrame,
  page: string,
): readonly PageInLanguage[] {
  const here = languages.find(({ tag }) => tag === language);
  if (here === undefined) return [];
  const depth = `${here.folder}${page}`.split('/').length - 1;
  const whole = here.folder === '' ? site : site?.slice(0, -here.folder.length);
  return languages.map(({ tag, name, folder, lacks }) => {
    const path = `${folder}${page}`;
    const href = `${'../'.repeat(depth)}${path}`;
    const published = path.replace(/(^|\/)index\.html$/, '$1');
    return {
      tag,
      name,
      href,
      address: whole === undefined ? href : `${whole}/${published}`,
      isHere: tag === language,
      isTranslated: !lacks.includes(page),
    };
  });
}
