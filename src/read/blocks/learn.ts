import { nearestName } from '../../diagnostics/index.ts';
import type { Learn } from '../types.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';

/** What practice asks: `all` moves, the `main` line without its variations, or `none`. */
export const learnWords = ['all', 'main', 'none'] as const satisfies readonly Learn[];

export function isLearnWord(text: string): text is Learn {
  return learnWords.some((word) => word === text);
}

/** The hint for a word that is none of these. */
export function learnHint(text: string): string {
  const near = text === '' ? undefined : nearestName(text, learnWords);
  const all =
    'Write `all`, `main` (the main line without its variations) or `none` (for reference only).';
  return near ? `Did you mean \`${near}\`? ${all}` : all;
}

export function readLearn(fence: Fence, { report }: BlockContext): { learn?: Learn } {
  const learn = fence.attributes.get('learn');
  if (!learn) return {};
  if (isLearnWord(learn.text)) return { learn: learn.text };
  report({
    place: learn.place,
    message: `\`${learn.text}\` does not say what practice asks.`,
    hint: learnHint(learn.text),
  });
  return {};
}
