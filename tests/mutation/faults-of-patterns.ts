/** Faults of patterns and of judgements. */
import { legalMoves, sideToMove } from '../../src/chess/index.ts';
import type { Place } from '../../src/diagnostics/index.ts';
import { adviceOf, judgementsOf, nodeAt, type PatternBlock } from '../../src/model/index.ts';
import { type CourseInMemory, textOf } from './course-in-memory.ts';
import type { FaultKind } from './faults.ts';
import { plantAt } from './planting.ts';

function patterns({ course }: CourseInMemory): PatternBlock[] {
  return course.chapters.flatMap(({ blocks }) =>
    blocks.filter((block) => block.kind === 'pattern'),
  );
}

/** The place of a stretch of a block's text. */
function within(
  course: CourseInMemory,
  { place, chapter }: PatternBlock,
  pattern: RegExp,
): Place | undefined {
  const text = textOf(course, chapter).slice(place.start.offset, place.end.offset);
  const match = pattern.exec(text);
  if (!match) return undefined;
  const at = place.start.offset + match.index;
  const point = (offset: number) => ({ line: place.start.line, column: 0, offset });
  return { file: chapter, start: point(at), end: point(at + match[0].length) };
}

export const faultsOfPatterns: readonly FaultKind[] = [
  {
    name: 'a pattern with a piece on another file',
    limit: 'other positions of the course may have the changed pattern',
    rules: ['pattern-nowhere', 'pattern-not-there', 'pattern-untrue'],
    *plant(course) {
      for (const block of patterns(course)) {
        for (const { square } of block.pieces) {
          const place = within(course, block, new RegExp(`(?<=[ KQRBN])${square}(?=\\s)`));
          const file = square.startsWith('h') ? 'a' : 'h';
          const moved = `${file}${square.charAt(1)}`;
          if (!place || block.pieces.some((other) => other.square === moved)) continue;
          yield plantAt(course, place, moved, `${square} -> ${moved}`, false);
        }
      }
    },
  },
  {
    name: 'a claim of a pattern that does not hold',
    rules: ['pattern-untrue'],
    *plant(course) {
      for (const block of patterns(course)) {
        for (const { argument, place } of block.claims) {
          const [first = '', ...others] = argument.split(' and ');
          const denied = first.startsWith('not ') ? first.slice(4) : `not ${first}`;
          const text = [denied, ...others].join(' and ');
          yield plantAt(course, place, text, text, block.matches.length > 0);
        }
      }
    },
  },
  {
    name: 'advice of a pattern that the course does not give',
    rules: ['pattern-untrue'],
    *plant(course) {
      const advice = adviceOf(course.course);
      const { side } = course.course.settings;
      for (const block of patterns(course)) {
        const [only, ...others] = block.advice;
        if (!only || others.length > 0) continue;
        const adviser = side === 'both' ? block.view : side;
        const at = block.matches
          .filter(({ reversed }) => !reversed)
          .map(({ key }) => ({ key, fen: `${key} 0 1` }))
          .filter((position) => sideToMove(position) === adviser);
        for (const position of at) {
          const other = legalMoves(position).find(
            (san) => san !== advice.get(position.key)?.[0]?.san && !san.startsWith(only.san),
          );
          if (!other) continue;
          const must = advice.has(position.key);
          yield plantAt(course, only.place, other, `${only.san} -> ${other}`, must);
        }
      }
    },
  },
  {
    name: 'an exception to a pattern that excepts nothing',
    rules: ['pattern-exception'],
    *plant(course) {
      const { labels } = course.course;
      for (const block of patterns(course)) {
        if (block.except.length > 0) continue;
        const matched = new Set(block.matches.map(({ key }) => key));
        const name = Object.keys(labels).find((label) => {
          const ref = labels[label]?.ref;
          const key = ref && nodeAt(course.course, ref)?.position?.key;
          return key !== undefined && !matched.has(key);
        });
        const end = within(course, block, /(?<=\n)`{3,}$/);
        if (name === undefined || !end) continue;
        yield plantAt(course, { ...end, end: end.start }, `except: ${name}\n`, name);
      }
    },
  },
  {
    name: 'a judgement with a date that is none',
    rules: ['judgement-date'],
    *plant(course) {
      for (const chapter of course.course.chapters) {
        for (const { datePlace, date } of judgementsOf(chapter)) {
          if (!datePlace) continue;
          for (const wrong of ['2025-13-01', '2925-01-01', '1.12.2025']) {
            yield plantAt(course, datePlace, wrong, `${date} -> ${wrong}`);
          }
        }
      }
    },
  },
];
