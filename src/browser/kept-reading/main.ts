/** What a chapter does when it is idle: its sections follow the reader, and how far it was read is kept. */
import { chapterText } from '../hosts.ts';
import { followSections } from './follow-sections.ts';
import { keepReading } from './keep-reading.ts';

const article = chapterText();
if (article !== null) {
  followSections(article);
  keepReading(article);
}
