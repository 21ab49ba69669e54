import type { ElementContent } from 'hast';
import type { Course } from '../../model/index.ts';
import { compose, element } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import type { LetterText } from './choose-text.ts';

/** What stands above and below the text of a letter. */
export interface LetterFrame {
  readonly head: ElementContent[];
  readonly foot: ElementContent[];
}

export interface LetterPlaces {
  readonly site: string | undefined;
  /** Address of the text on the course's site. */
  readonly page: string | undefined;
  /** Where a reader leaves the list. */
  readonly unsubscribe?: string | undefined;
  /** Who sends it, and where he can be reached by post. */
  readonly sender?: string | undefined;
  /** Links to pages of the author's. */
  readonly pages?: readonly ElementContent[];
}

export function letterFrame(
  course: Course,
  text: LetterText,
  { site, page, unsubscribe, sender, pages = [] }: LetterPlaces,
): LetterFrame {
  const { title, author, licence, language } = course.settings;
  const strings = stringsFor(language);
  const line = (children: (ElementContent | string)[], className?: string) =>
    element('p', className === undefined ? {} : { className: [className] }, children);
  const link = (href: string, words: string) => element('a', { href }, [words]);
  const name =
    site === undefined ? element('i', {}, [title]) : link(`${site.replace(/\/+$/, '')}/`, title);
  const sentence = author === undefined ? strings.letter.fromCourse : strings.letter.fromCourseBy;
  return {
    head: [
      line([text.above === undefined ? title : `${title} · ${text.above}`], 'above'),
      element('h1', {}, [text.title]),
      ...(text.summary === undefined ? [] : [line([text.summary.trim()], 'summary')]),
    ],
    foot: [
      line(compose(sentence, { course: name, author: author ?? '' })),
      ...(page === undefined ? [] : [line([`${strings.letter.withBoard} `, link(page, page)])]),
      ...(licence === undefined ? [] : [line([strings.licence(licence)])]),
      ...(sender === undefined ? [] : [line([sender])]),
      ...(unsubscribe === undefined ? [] : [line([link(unsubscribe, strings.letter.unsubscribe)])]),
      ...pages,
    ],
  };
}
