import { textBlock } from './markdown-text.ts';
import type { ImportNote } from './types.ts';

/** What was not understood, one after another, as a file beside the course. */
export function writeNotes(file: string, notes: readonly ImportNote[], untold = 0): string {
  const entries = notes.map(({ game, line, message, text }) => {
    const quoted = text.trim() === '' ? '' : `\n\n${textBlock(text)}`;
    return `Game ${game}, line ${line}: ${message}${quoted}\n`;
  });
  return [
    `# What was not understood of ${file}\n`,
    'Moves that cannot be played, and all behind them in their line, stand in the chapters as text',
    'that begins with `[not read:`. Other text that is no move stands only here.\n',
    ...entries,
    ...(untold > 0
      ? [`Behind these, ${untold.toLocaleString('en')} more places were not understood.\n`]
      : []),
  ].join('\n');
}
