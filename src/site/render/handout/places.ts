import { type Ask, numberedMove, type Target } from '../../../render/index.ts';
import type { Strings } from '../../../strings/index.ts';

/** Where a target is, in words; may name a diagram by number. */
export interface PlaceOnPaper {
  readonly words: string;
  readonly diagram?: number;
}

/**
 * Says where to find a target on paper: `diagram 12`, `chapter 3, after 7...Be7`. Undefined if the link's own words say
 * it all.
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
