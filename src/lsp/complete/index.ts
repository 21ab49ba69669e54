import type { CompletionItem, Position } from 'vscode-languageserver-protocol';
import { blockAt, type Course, nodeAt, speaksOf, textNodes } from '../../model/index.ts';
import { isPageFile } from '../../read/index.ts';
import type { Asked } from '../asked.ts';
import { bodyOffers, movetextOffers, openingOffers } from './blocks.ts';
import { type SpeaksOf, textOffers } from './directives.ts';
import { fenceAt } from './fence-at.ts';
import { CompletionItemKind, type Offers, toItems } from './item.ts';
import { lastCourse, playPiece } from './piece.ts';
import { frontMatterOffers, settingOffers } from './yaml.ts';

/**
 * Signs after which an editor asks by itself. No space: behind each move a list would open, and a line break that is
 * typed then takes its first move in many editors.
 */
export const completionTriggers = [':', '[', '"', '(', '.', '`', '='];

/** What may be written at a place: legal moves, names, directives, claims, settings. */
export function complete(asked: Asked, position: Position): CompletionItem[] {
  const offset = asked.offsetOf(position);
  const found = offersAt(asked, offset);
  return found ? toItems(found, offset, asked) : [];
}

/** How a chapter that is still empty begins. */
const beginning: Offers = {
  start: 0,
  offers: [
    {
      label: '---',
      kind: CompletionItemKind.Class,
      text: '---\ntitle: $0\n---\n',
      detail: 'a title and what else is known of it',
    },
  ],
};

function offersAt(asked: Asked, offset: number): Offers | undefined {
  const { file, text } = asked;
  if (file === 'course.yaml') return settingOffers(text, offset, lastCourse(asked));
  if (!/^(?:chapters|pages|news)\/[^/]+\.md$/.test(file)) return undefined;
  if (!file.startsWith('news/') && /^-{0,3}\s*$/.test(text)) return beginning;
  const front = /^---[ \t]*(?:\r\n?|\n)/.exec(text)?.[0].length;
  if (front !== undefined && offset >= front) {
    const body = text.slice(front);
    const end = front + (/^---/m.exec(body)?.index ?? body.length);
    if (offset < end || end === text.length) {
      const piece = text.slice(front, end);
      return frontMatterOffers(text.slice(front, offset), piece, offset, isPageFile(file));
    }
  }
  const course = lastCourse(asked);
  if (!course) return undefined;
  const fence = fenceAt(text, offset);
  if (!fence) return textOffers(asked, offset, course, shownBefore(asked, offset, course));
  if (fence.isOnOpening) return openingOffers(fence, asked, offset, course);
  if (fence.name === 'moves' || fence.name === 'game') {
    return movetextOffers(fence, asked, offset, course);
  }
  return bodyOffers(fence, asked, offset, course);
}

/** What a directive in the prose speaks of: the last move shown before it. */
function shownBefore({ text }: Asked, offset: number, course: Course): SpeaksOf {
  return () => {
    const before = text.slice(0, offset).replace(/:[a-z]+\[[^\][]*$/, '');
    const opening = /^[ \t]*(?:```+|~~~+)(?:moves|diagram|exercise|game)\b/gm;
    const last = [...before.matchAll(opening)].at(-1);
    if (!last) return undefined;
    // A directive that cannot be mistaken, to be asked what it speaks of.
    const chapter = playPiece(`${before.slice(last.index)} :mark[a1]\n`, course);
    if (!chapter) return undefined;
    let ref: ReturnType<typeof speaksOf>;
    for (const node of textNodes(chapter, 'courseDirective')) ref = speaksOf(chapter, node) ?? ref;
    const whole = { ...course, chapters: [...course.chapters, chapter] };
    const block = ref && blockAt(whole, ref);
    const node = ref && nodeAt(whole, ref);
    return block && node ? { node, block, isInComment: true } : undefined;
  };
}
