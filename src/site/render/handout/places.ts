import { type Ask, numberedMove, type Target } from '../../../render/index.ts';
import type { Strings } from '../../../strings/index.ts';

/** Where a target is, in words; they may name a diagram by its number. */
export interface PlaceOnPaper {
  readonly words: string;
  readonly diagram?: number;
}

/**
 * Tells a reader on paper where to look for a target: `diagram 12`, `chapter 3, after 7...Be7`.
 * What the link's own words say already is not said twice, and then there is nothing to tell.
 */
export function placeTeller(ask: Ask, strings: Strings) {
  const { handout } = strings;
  return (target: Target, from: string, words: string): PlaceOnPaper | undefined => {
    if (target.to !== 'place' && target.to !== 'chapter') return undefined;
    const chapter = target.to === 'place' ? target.ref.chapter : target.chapter;
    const id = target.to === 'place' ? ask('id', target.ref) : target.id;
    const { title = '', number = 0, page } = (chapter !== from && ask('chapter', chapter)) || {};
    const elsewhere = chapter !== from && !words.includes(title);
    const there = elsewhere ? [page ? title : handout.chapter(number)] : [];
    const { diagram, ref } = id === undefined ? {} : ask('told', { chapter, id });
    if (diagram !== undefined) return { words: handout.diagram(diagram), diagram };
    const named = ref && ask('move', ref);
    const move = named && numberedMove(named, strings);
    if (move && !words.includes(move)) there.push(strings.after(move));
    return there.length === 0 ? undefined : { words: there.join(', ') };
  };
}
