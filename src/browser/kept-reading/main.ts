/** What a chapter does when it is idle: its sections follow the reader, and how far it was read is kept. */
import { followSections } from './follow-sections.ts';
import { keepReading } from './keep-reading.ts';

const article = document.querySelector('article');
if (article !== null) {
  followSections(article);
  keepReading(article);
}
