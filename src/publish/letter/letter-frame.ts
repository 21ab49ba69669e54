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

/** `page` is the address of the text on the course's site. */
export function letterFrame(
  course: Course,
  text: LetterText,
  { site, page }: { site: string | undefined; page: string | undefined },
): LetterFrame {
  const { title, author, licence, language } = course.settings;
  const strings = stringsFor(language);
  const line = (children: (ElementContent | string)[], className?: string) =>
    element('p', className === undefined ? {} : { className: [className] }, children);
  const link = (href: string, words: string) => element('a', { href }, [words]);
  const name = site === undefined ? element('i', {}, [title]) : link(site, title);
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
    ],
  };
}
