import { initialPosition, isMoveFault, type Position, playMove } from '../../../chess/index.ts';
import type { CourseTable, TableMove, TableMoveKind } from '../../../contract/course-table.ts';
import { type PracticeCourse, practiceCourse } from '../session/practice-course.ts';

interface Draft {
  readonly key: string;
  readonly moves: { san: string; to: string; kind: TableMoveKind; chapters: Set<number> }[];
  readonly chapters: Set<number>;
}

/**
 * A course for White from lines a chapter, `e4 e5 Nf3`: White's moves are advice, those with `~`
 * behind them only mentioned, those with `?` warned of. `noted` are the SANs that have a comment.
 */
export function smallCourse(
  chapters: readonly (readonly string[])[],
  noted: readonly string[] = [],
): PracticeCourse {
  const drafts = new Map<string, Draft>();
  const at = (position: Position, chapter: number): Draft => {
    const draft = drafts.get(position.key) ?? {
      key: position.key,
      moves: [],
      chapters: new Set<number>(),
    };
    drafts.set(position.key, draft);
    draft.chapters.add(chapter);
    return draft;
  };
  chapters.forEach((lines, chapter) => {
    for (const line of lines) {
      let here = initialPosition;
      for (const written of line.split(' ')) {
        const draft = at(here, chapter);
        const played = playMove(here, written.replace(/[~?]$/, ''));
        if (isMoveFault(played)) throw new Error(`${written}: ${played.reason}`);
        const known = draft.moves.find(({ san }) => san === played.san);
        if (known) known.chapters.add(chapter);
        else {
          const kind = kindOf(written, played.color === 'white');
          const { san, after } = played;
          draft.moves.push({ san, to: after.key, kind, chapters: new Set([chapter]) });
        }
        here = played.after;
        at(here, chapter);
      }
    }
  });
  const list = [...drafts.values()];
  const places = (of: ReadonlySet<number>) => [...of].map((chapter) => [chapter] as const);
  const table: CourseTable = {
    format: 1,
    course: 'small',
    edition: '1',
    title: 'Small',
    language: 'en',
    side: 'white',
    chapters: chapters.map((_, index) => ({ title: `Chapter ${index}`, page: `c${index}.html` })),
    positions: list.map(({ key, moves, chapters: of }) => ({
      key,
      at: places(of),
      moves: moves.map(
        ({ san, to, kind, chapters: ofMove }): TableMove => ({
          san,
          to: list.findIndex((draft) => draft.key === to),
          kind,
          at: places(ofMove),
        }),
      ),
    })),
  };
  const notes = table.positions.flatMap(({ moves }, index) =>
    moves
      .filter(({ san }) => noted.includes(san))
      .map(({ san }) => [`${index} ${san}`, { html: `On ${san}.` }] as const),
  );
  const starts = chapters.map((_, chapter) => ({ chapter, position: 0, number: 1 }));
  return practiceCourse(table, {
    format: 1,
    starts,
    unasked: [],
    aside: [],
    notes: Object.fromEntries(notes),
  });
}

function kindOf(written: string, own: boolean): TableMoveKind {
  if (!own) return 'reply';
  if (written.endsWith('?')) return 'bad';
  return written.endsWith('~') ? 'option' : 'advice';
}
