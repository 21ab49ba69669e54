import type { Place } from '../../diagnostics/index.ts';
import { placeOfNode } from '../place-of-node.ts';
import type { Chapter } from '../types.ts';
import { nameUses } from './name-uses.ts';
import { textNodes } from './walk-chapter.ts';

/** A position's name as an author wrote it. */
export interface WrittenName {
  readonly name: string;
  /** The name itself. */
  readonly written: Place;
  /** The whole directive or link. */
  readonly place: Place;
  /** Whether it is given here, by `:here[…]`, or used. */
  readonly isGiven: boolean;
}

/** Every name in a chapter's texts, given or used, except those in claims. */
export function namesWritten(chapter: Chapter): WrittenName[] {
  const { file } = chapter;
  const names: WrittenName[] = [];
  for (const node of textNodes(chapter, 'courseDirective')) {
    if (node.name !== 'here') continue;
    names.push({
      name: node.argument,
      written: { file, ...node.argumentRange },
      place: placeOfNode(node, file),
      isGiven: true,
    });
  }
  for (const { name, written, place } of nameUses(chapter)) {
    names.push({ name, written, place, isGiven: false });
  }
  for (const block of chapter.blocks) {
    for (const { name, place } of block.kind === 'game' ? block.limits : []) {
      if (!/^\d+$/.test(name) && !names.some(({ written }) => written === place)) {
        names.push({ name, written: place, place, isGiven: false });
      }
    }
  }
  return names;
}
