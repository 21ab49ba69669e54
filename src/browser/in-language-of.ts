/** The attribute of a course's own words on a page that may be in another language. */
export function inLanguageOf({
  language,
}: {
  readonly language: string;
}): Readonly<Record<string, string>> {
  return language === document.documentElement.lang ? {} : { lang: language };
}
