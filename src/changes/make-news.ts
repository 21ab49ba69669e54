import { dayInWords, stringsFor } from '../strings/index.ts';
import type { CourseChanges } from './types.ts';
import { writeChanges } from './write-changes.ts';

/** A file for the course's `news/`: front matter and the changes, for the author to edit. */
export function makeNews(
  changes: CourseChanges,
  {
    language,
    date,
    from,
  }: { readonly language: string; readonly date: string; readonly from: string },
): string {
  const title = stringsFor(language).changes.titleOf(dayInWords(date, language));
  const front = [
    `title: ${JSON.stringify(title)}`,
    `date: ${date}`,
    `from: ${JSON.stringify(from)}`,
  ];
  return `---\n${front.join('\n')}\n---\n\n${writeChanges(changes, { language, form: 'markdown' })}`;
}
