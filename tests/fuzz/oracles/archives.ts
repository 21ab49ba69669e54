/** Oracles for PGN files of any bytes. */

import { createTextReport } from '../../../src/cli/compare/compare-report.ts';
import { createJsonReport } from '../../../src/cli/compare/compare-report-json.ts';
import type { ComparisonReport } from '../../../src/cli/compare/comparison.ts';
import type { CourseTable } from '../../../src/contract/course-table.ts';
import { makeDraft } from '../../../src/import/index.ts';
import { compareGames } from '../../../src/lookup/games/index.ts';
import type { Course } from '../../../src/model/index.ts';
import {
  type ArchiveGame,
  makeMovetext,
  type PlainLine,
  parseGames,
} from '../../../src/movetext/index.ts';
import { plain } from '../../../src/movetext/testing/outline.ts';
import { makePgn } from '../../../src/publish/pgn/index.ts';
import type { Oracle } from '../case.ts';
import { runCourse } from './course-run.ts';

export interface Archive {
  readonly bytes: Buffer;
  /** As `readArchive` decodes it: UTF-8, else ISO 8859-1, without a mark. */
  readonly text: string;
}

export function readBytes(written: string): Archive {
  const bytes = Buffer.from(written, 'latin1');
  try {
    return { bytes, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { bytes, text: new TextDecoder('latin1').decode(bytes) };
  }
}

/** What is read is written so that it is read again as the same. */
export const inverseMovetext: Oracle<Archive> = {
  name: 'inverse movetext',
  *examine({ text }) {
    for (const game of parseGames(text)) {
      const written = makeMovetext(game);
      const again = parseGames(written);
      const [first] = again;
      if (again.length > 1) yield `one game is written as ${again.length}`;
      if (!first) continue;
      if (first.problems.length > 0) yield `what we write has ${first.problems[0]?.kind}`;
      if (flat(first.line) !== flat(game.line)) yield 'moves, glyphs or words are lost';
      if (makeMovetext(first) !== written) yield 'written again it is another text';
    }
  },
};

/** A line break may stand for a space in a comment. */
const flat = (line: PlainLine) =>
  JSON.stringify(plain({ tags: [], line }).line).replaceAll('\\n', ' ');

/** Games are compared the same however the file comes in pieces. */
export const steadyComparison = ({
  course,
  table,
}: {
  readonly course: Course;
  readonly table: CourseTable;
}): Oracle<Archive> => ({
  name: 'steady comparison',
  *examine({ bytes }) {
    const whole = compareGames(table);
    const expected = [...whole.push(bytes), ...whole.end()];
    for (const size of [1, 7, 64]) {
      const comparison = compareGames(table);
      const games = [];
      for (let at = 0; at < bytes.length; at += size) {
        games.push(...comparison.push(bytes.subarray(at, at + size)));
      }
      games.push(...comparison.end());
      if (JSON.stringify(games) !== JSON.stringify(expected))
        yield `pieces of ${size} bytes give other games`;
    }
    const compared = { table, course, player: '' };
    const all = ({ add, end }: ComparisonReport) => expected.map(add).join('') + end(0);
    const report = all(createTextReport(compared, { all: true }));
    const json = all(createJsonReport(compared));
    if (JSON.parse(json).games.length !== expected.length) yield 'the JSON has other games';
    const slip = /\bundefined\b|\bNaN\b/.exec(report)?.[0];
    if (slip !== undefined && !/undefined|NaN/.test(bytes.toString())) yield `a slip: ${slip}`;
  },
});

/** Any file of games becomes a course without errors, whose PGN has the same moves. */
export const soundDrafts: Oracle<Archive> = {
  name: 'sound drafts',
  async *examine({ text }) {
    for (const by of ['game', 'branch'] as const) {
      const draft = await makeDraft(partOf(text), { by, side: 'both', title: 'Games' });
      if (draft.isEmpty) continue;
      const files = Object.fromEntries(draft.files.map((file) => [file.path, file.text]));
      const { diagnostics, checked } = runCourse(files);
      const error = diagnostics.find(({ severity }) => severity === 'error');
      if (error) yield `the draft has an error (${by}): ${error.rule}: ${error.message}`;
      if (!checked || by === 'branch') continue;
      if (draft.notes.length > 0) continue;
      const there = parseGames(makePgn(checked))
        .map(({ line }) => movesOf(line))
        .filter(Boolean);
      const here = parseGames(text)
        .map(({ line }) => movesOf(line))
        .filter(Boolean);
      if (there.join('\n') !== here.join('\n')) {
        yield `the draft's PGN has other moves: ${there.join(' | ')} for ${here.join(' | ')}`;
      }
    }
  },
};

async function* partOf(text: string): AsyncGenerator<ArchiveGame> {
  yield { text, line: 1, tooLong: false };
}

function movesOf(line: PlainLine): string {
  return line.moves
    .map(({ san, glyphs, after }) => {
      const inner = after.map((item) =>
        item.type === 'variation' ? `(${movesOf(item.line)})` : '',
      );
      return `${targetOf(san.text)}${glyphs.map(({ nag }) => `$${nag}`).join('')}${inner.join('')}`;
    })
    .join(' ');
}

/** What a draft spells anew keeps the square that it goes to. */
function targetOf(san: string): string {
  return (
    /[a-h][1-8](?![\s\S]*[a-h][1-8])/.exec(san)?.[0] ??
    san.replace(/[^0OО]/gi, '').length.toString()
  );
}
