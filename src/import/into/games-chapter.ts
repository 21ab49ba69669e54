import { paragraphMarkdown } from '../markdown-text.ts';
import type { PlayedGame } from './types.ts';

/** Whole games as a chapter of their own, a draft until its author has found them a place. */
export function gamesChapter(file: string, games: readonly PlayedGame[]): string {
  const title = JSON.stringify(`Games from ${file}`);
  const parts = games.map(({ name, block }) => `## ${paragraphMarkdown(name)}\n\n${block}`);
  return `---\ntitle: ${title}\ndraft: true\n---\n\n${parts.join('\n\n')}\n`;
}
