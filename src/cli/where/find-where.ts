import { initialPosition, numberedSan, type PlayedMove } from '../../chess/index.ts';
import { UserError } from '../../diagnostics/index.ts';
import {
  type FollowedMoves,
  nearestPositions,
  type PositionSearch,
  searchPositions,
} from '../../lookup/search/index.ts';
import { nodeAt } from '../../model/index.ts';
import { assignAddresses } from '../../render/index.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';
import { stringsFor } from '../../strings/index.ts';
import { loadCourse } from '../load-course.ts';
import type { WhereOptions } from './where-options.ts';
import type { WhereResult } from './where-report.ts';
import { whereaboutsOf } from './whereabouts.ts';

/** Positions that are near are shown up to so many, and up to so many squares that differ: more says nothing. */
const near = { limit: 3, most: 6 };

/**
 * Looks for a position in the course in a folder.
 * @returns what is known of it, and how many errors the course has.
 * @throws UserError as `where` does.
 */
export async function findWhere(
  asked: string,
  folder: string,
  options: Pick<WhereOptions, 'site'>,
): Promise<{ readonly answer: WhereResult; readonly errors: number }> {
  const { course, diagnostics } = await loadCourse(folder);
  const { settings } = course;
  const table = makeCourseTable(course, assignAddresses(course));
  const found = searchPositions(
    table,
    asked,
    stringsFor(settings.language, 'letters').pieceLetters,
  );
  const about = { course, table, site: options.site ?? settings.site };
  const tell = (index: number) => whereaboutsOf(about, keyOf(index));
  const keyOf = (index: number) => table.positions[index]?.key ?? '';
  const nearTo = (key: string) =>
    nearestPositions(table, key, near)
      .filter(({ position }) => keyOf(position) !== initialPosition.key)
      .map(({ position, squares }) => ({ squares, ...tell(position) }));

  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  return { answer: answerOf(found), errors };

  function answerOf(search: PositionSearch): WhereResult {
    switch (search.kind) {
      case 'position': {
        const key = keyOf(search.exact ?? -1) || search.key;
        const here = whereaboutsOf(about, key);
        const alike = search.alike.map(({ position, differs }) => ({ differs, ...tell(position) }));
        const isThere = here.places.length > 0;
        return {
          found: isThere ? [here] : [],
          alike,
          nearest: isThere || alike.length > 0 ? [] : nearTo(key),
        };
      }
      case 'placement': {
        const all = search.exact.length > 0 ? search.exact : search.holding;
        return { found: all.map(tell), alike: [], nearest: [] };
      }
      case 'moves':
        return ofMoves(search);
      case 'fen-fault':
        throw new UserError(
          `this FEN is no position: ${search.fault.reason}`,
          'copy the FEN again from where it was made',
        );
      case 'unreadable': {
        const named = Object.hasOwn(course.labels, asked) ? course.labels[asked] : undefined;
        const key = named && nodeAt(course, named.ref)?.position?.key;
        if (key !== undefined)
          return { found: [whereaboutsOf(about, key)], alike: [], nearest: [] };
        throw new UserError(
          `“${search.words}” is neither a move nor a FEN nor the name of a position`,
          'give a FEN or moves such as "1. d4 d5 2. c4", in quotation marks, or a name that `:here` gives',
        );
      }
      case 'empty':
        throw new UserError('no position is given', 'give a FEN or moves, in quotation marks');
    }
  }

  function ofMoves({ start, played, stopped, known, knownPlies = 0 }: FollowedMoves): WhereResult {
    const last = played.at(-1)?.after ?? start;
    const here = whereaboutsOf(about, last.key);
    const isThere = here.places.length > 0 && stopped === undefined;
    return {
      found: isThere ? [here] : [],
      alike: [],
      nearest: isThere
        ? []
        : nearTo(last.key).filter(({ position }) => position !== keyOf(known ?? -1)),
      ...(stopped && {
        stopped: { move: stopped.written, reason: stopped.fault.reason },
      }),
      ...(!isThere &&
        known !== undefined && {
          known: {
            plies: knownPlies,
            next: nextName(played[knownPlies]),
            ...tell(known),
          },
        }),
    };
  }
}

function nextName(move: PlayedMove | undefined): string | undefined {
  return move && numberedSan(move);
}
