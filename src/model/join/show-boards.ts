import { initialPosition, isMoveFault, type Position, playMove } from '../../chess/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import {
  type CourseSettings,
  type DiagramSyntax,
  type NewsSyntax,
  parseArrow,
} from '../../read/index.ts';
import { mainLine } from '../main-line.ts';
import { positionOfFen } from '../play/start-position.ts';
import type { CourseProblem, DiagramBlock, News } from '../types.ts';

/** News with boards like those of chapters, and its problems. */
export function showBoards(
  { problems, blocks, ...entry }: NewsSyntax,
  side: CourseSettings['side'],
): { readonly news: News; readonly problems: readonly CourseProblem[] } {
  const found: CourseProblem[] = [];
  const report: Report = (place, message, hint) => {
    found.push({ rule: 'chapter-unreadable', place, message, hint });
  };
  const view = side === 'black' ? 'black' : 'white';
  const shown = blocks.map(
    (syntax): DiagramBlock => ({
      kind: 'diagram',
      key: syntax.key,
      chapter: entry.file,
      place: syntax.place,
      view: syntax.view ?? view,
      castled: [],
      nodes: [],
      ...positionIn(syntax, report),
      ...(syntax.at && { at: { name: syntax.at.text, place: syntax.at.place } }),
      ...(syntax.alt !== undefined && { alt: syntax.alt }),
      caption: syntax.caption,
      marks: syntax.marks.map(({ text }) => text),
      arrows: syntax.arrows.map(({ text, meaning, place }) => ({
        meaning,
        ...parseArrow(text),
        place,
      })),
      claims: [],
    }),
  );
  return { news: { ...entry, blocks: shown }, problems: [...problems, ...found] };
}

type Report = (place: Place, message: string, hint: string) => void;

/** The position of a FEN or after moves from the start; undefined for a name. */
function positionIn(
  { fen, after }: DiagramSyntax,
  report: Report,
): Pick<DiagramBlock, 'position' | 'lastMove'> {
  if (fen) {
    const position = positionOfFen(fen, report);
    return position ? { position } : {};
  }
  if (!after) return {};
  let shown: { position: Position; lastMove?: DiagramBlock['lastMove'] } = {
    position: initialPosition,
  };
  for (const { written } of mainLine(after.nodes)) {
    if (!written) continue;
    const played = playMove(shown.position, written.san);
    if (isMoveFault(played)) {
      const [meant] = played.meant;
      report(
        written.place,
        `\`${written.san}\` cannot be played: ${played.reason}.`,
        meant === undefined ? 'Give moves that can be played.' : `Did you mean ${meant}?`,
      );
      return {};
    }
    shown = { position: played.after, lastMove: { from: played.from, to: played.to } };
  }
  const { position, lastMove } = shown;
  return lastMove === undefined ? { position } : { position, lastMove };
}
