import { adviceOf } from '../../check/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import { blockAt, type Course, type NodeRef } from '../../model/index.ts';
import { nodeAt, positionInWords } from '../../render/index.ts';
import type { Plate } from '../site-data.ts';
import type { SiteContext } from './site-context.ts';

/** Makes plates: boards with their words, for pages that show many. */
export interface PlateMaker {
  /** Undefined without a position. `words` default to the move that leads there. */
  readonly plate: (ref: NodeRef, said: PlateSaid) => Plate | undefined;
}

interface PlateSaid {
  readonly title?: string | undefined;
  readonly words?: string | undefined;
  /** The chapter that the reader is in, which the words leave out. */
  readonly chapter?: string | undefined;
}

/**
 * @param drawn boards that stand in the page; others are drawn when they come into view, since a thousand boards are
 * megabytes.
 */
export function makePlates(
  { course, ask, addresses, strings }: SiteContext,
  drawn: number,
): PlateMaker {
  let left = drawn;
  return {
    plate(ref, { title, words, chapter }) {
      const node = nodeAt(course, ref);
      const view = blockAt(course, ref)?.view;
      if (node?.position === undefined || view === undefined) return undefined;
      const { move, position } = node;
      const lastMove = move && { from: move.from, to: move.to };
      const isDrawn = left-- > 0;
      return {
        ...(title !== undefined && { title }),
        words: words ?? positionInWords(ask, ref, strings, chapter),
        href: addresses.href(ref),
        view,
        ...(isDrawn
          ? {
              board: drawBoardInPage({
                placement: position.fen,
                view,
                coordinates: false,
                lastMove,
              }),
            }
          : { late: { placement: position.key.replace(/ .*/, ''), lastMove } }),
        ...asked(course, ref),
      };
    },
  };
}

/** What practice asks there: the move from the position, else the one that led to it. */
function asked(course: Course, ref: NodeRef): Pick<Plate, 'asked'> {
  const node = nodeAt(course, ref);
  const parent =
    node?.parent === undefined ? undefined : nodeAt(course, { ...ref, node: node.parent });
  const onward = adviceFrom(course, node?.position?.key);
  if (onward.length > 0) return { asked: { key: node?.position?.key ?? '', advice: onward } };
  const before = adviceFrom(course, parent?.position?.key);
  return node?.move && before.includes(node.move.san)
    ? { asked: { key: parent?.position?.key ?? '', advice: before } }
    : {};
}

function adviceFrom(course: Course, key: string | undefined): string[] {
  return key === undefined ? [] : (adviceOf(course).get(key) ?? []).map(({ san }) => san);
}
