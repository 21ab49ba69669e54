import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Chess } from 'chess.js';
import { type MadeLine, makeCourse } from './make-course.ts';

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
export function editChapter({ folder }: Pick<BenchCourse, 'folder'>, chapters: number): string {
  edits += 1;
  const word = `edit${edits}x`;
  appendFileSync(path.join(folder, 'chapters', middleChapter(chapters)), `\nThis is ${word}.\n`);
  return word;
}

/** Has a main line in the middle of the course end with another legal move than it did. */
export function editMove({ folder, lines }: BenchCourse, chapters: number): void {
  const file = path.join(folder, 'chapters', middleChapter(chapters));
  const made = JSON.parse(readFileSync(lines, 'utf8')) as MadeLine[];
  const main = made.filter(({ fen }) => fen === '')[Math.ceil(chapters / 2) - 1];
  const chess = new Chess();
  for (const move of main?.moves.slice(0, -1) ?? []) chess.move(move);
  const legal = chess.moves();
  const text = readFileSync(file, 'utf8').replace(/(\S+)(?=\n```\n)/, (last) => {
    const at = legal.indexOf(last);
    if (at < 0 || legal.length < 2) throw new Error(`${file}: ${last} is not the line's last move`);
    return legal[(at + 1) % legal.length] as string;
  });
  writeFileSync(file, text);
}

export function middleChapter(chapters: number): string {
  const number = Math.ceil(chapters / 2);
  return `${String(number).padStart(4, '0')}-chapter-${number}.md`;
}
