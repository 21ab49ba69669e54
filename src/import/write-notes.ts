import { textBlock } from './markdown-text.ts';
import type { ImportNote } from './types.ts';

/** What was not read, or not as it stands, one after another, as a file beside the course. */
export function writeNotes(file: string, notes: readonly ImportNote[], untold = 0): string {
  const entries = notes.map(({ game, line, message, text }) => {
    const quoted = text.trim() === '' ? '' : `\n\n${textBlock(text)}`;
    return `Game ${game}, line ${line}: ${message}${quoted}\n`;
  });
  return [
    `# Notes on ${file}\n`,
    'What was not read, and what was not read as it stands. Moves that cannot be played, and all behind',
    'them in their line, stand in the chapters as code that begins with `[not read:`. Other text that',
    'is no move stands only here.\n',
    ...entries,
    ...(untold > 0
      ? [`Behind these, ${untold.toLocaleString('en')} more places have a note.\n`]
      : []),
  ].join('\n');
}
