import type { PhrasingContent, Text } from 'mdast';
import { joinTexts, partOfText } from '../written-at.ts';
import { type DirectiveName, silentDirectives } from './directives.ts';

/**
 * Removes directives that print nothing, and spaces that would be left before punctuation or beside another space;
 * trims both ends.
 */
export function tidySpaces(content: readonly PhrasingContent[]): PhrasingContent[] {
  const kept: PhrasingContent[] = [];
  for (const node of content) {
    if (node.type === 'courseDirective' && isSilent(node.name)) continue;
    const last = kept.at(-1);
    if (node.type === 'text' && last?.type === 'text') kept[kept.length - 1] = join(last, node);
    else kept.push(node);
  }
  const [first] = kept;
  if (first?.type === 'text') {
    kept[0] = partOfText(first, first.value.length - first.value.trimStart().length);
  }
  const last = kept.at(-1);
  if (last?.type === 'text' && /\s$/.test(last.value)) {
    kept[kept.length - 1] = { ...last, value: last.value.trimEnd() };
  }
  return kept.filter((node) => node.type !== 'text' || node.value !== '');
}

function isSilent(name: DirectiveName): boolean {
  return silentDirectives.has(name);
}

/** Joins the texts around a removed directive. */
function join(before: Text, after: Text): Text {
  const hanging = /\s$/.test(before.value) && /^[\s.,;:!?)\]]/.test(after.value);
  return joinTexts(hanging ? { ...before, value: before.value.trimEnd() } : before, after);
}
