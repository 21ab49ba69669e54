/** The script that keeps how far a chapter was read; chapters load it when they are idle. */
import { keepReading } from './keep-reading.ts';

const article = document.querySelector('article');
if (article !== null) keepReading(article);
