import { appendFileSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { makeCourse } from './make-course.ts';

export interface BenchCourse {
  readonly folder: string;
  /** A JSON file of its lines, for the bare replay. */
  readonly lines: string;
}

/** A course of 1,500 words and 50 moves a chapter; made once in a run. */
export async function courseOf(chapters: number, work: string): Promise<BenchCourse> {
  const folder = path.join(work, `course-${chapters}`);
  const lines = `${folder}.json`;
  if (!existsSync(lines)) {
    mkdirSync(folder, { recursive: true });
    const made = await makeCourse(folder, { chapters, movesPerChapter: 50, wordsPerChapter: 1500 });
    writeFileSync(lines, JSON.stringify(made.lines));
  }
  return { folder, lines };
}

let edits = 0;

/** Adds a sentence to a chapter in the middle, another one each time; returns a word of it. */
export function editChapter({ folder }: BenchCourse, chapters: number): string {
  edits += 1;
  const word = `edit${edits}x`;
  appendFileSync(path.join(folder, 'chapters', middleChapter(chapters)), `\nThis is ${word}.\n`);
  return word;
}

export function middleChapter(chapters: number): string {
  const number = Math.ceil(chapters / 2);
  return `${String(number).padStart(4, '0')}-chapter-${number}.md`;
}
