import { assignAddresses } from '../../src/render/addresses.ts';
import { makeCourseTable } from '../../src/site/render/course-table.ts';
import type { Failure, FuzzCase, Oracle } from './case.ts';
import { demoCourse } from './make/sources.ts';
import { inverseMovetext, readBytes, soundDrafts, steadyComparison } from './oracles/archives.ts';
import { type CourseRun, runCourse } from './oracles/course-run.ts';
import { calmChanges, readablePgn, soundBook } from './oracles/files.ts';
import { exactPlaces, knownRules, plainSentences, sameAgain } from './oracles/findings.ts';
import { steadyFolders } from './oracles/folders.ts';
import { soundLetters } from './oracles/letters.ts';
import { anyLineEnds, exactModel, legalPositions } from './oracles/model.ts';
import { soundPictures } from './oracles/pictures.ts';
import { markedPreview } from './oracles/preview.ts';
import { lastingRepairs } from './oracles/repairs.ts';
import { soundReports } from './oracles/reports.ts';
import { soundPages } from './oracles/site.ts';
import { usefulTables } from './oracles/tables.ts';

const demo = runCourse(demoCourse);
if (demo.checked === undefined) throw new Error('the example course has errors');
const table = makeCourseTable(demo.course, assignAddresses(demo.course));

export const courseOracles: readonly Oracle<CourseRun>[] = [
  sameAgain,
  knownRules,
  exactPlaces,
  plainSentences,
  lastingRepairs,
  soundReports,
  exactModel,
  legalPositions,
  anyLineEnds,
  soundPages,
  markedPreview,
  usefulTables,
  readablePgn,
  soundBook,
  soundLetters,
  soundPictures,
  calmChanges(demo.checked),
];

const archiveOracles = [inverseMovetext, steadyComparison({ ...demo, table }), soundDrafts];

/** Tries a case: everything that does not hold, or nothing. */
export async function runCase({ target, files }: FuzzCase): Promise<Failure[]> {
  switch (target) {
    case 'course': {
      const run = guard('reading', () => runCourse(files));
      return 'message' in run ? [run] : examine(courseOracles, run);
    }
    case 'folder':
      return examine([steadyFolders], files);
    case 'archive':
      return examine(archiveOracles, readBytes(files['games.pgn'] ?? ''));
  }
}

function guard<T>(oracle: string, run: () => T): T | Failure {
  try {
    return run();
  } catch (error) {
    return thrown(oracle, error);
  }
}

/** So many faults of one kind are told for a case. */
const mostTold = 5;

async function examine<T>(oracles: readonly Oracle<T>[], subject: T): Promise<Failure[]> {
  const failures: Failure[] = [];
  for (const { name, examine } of oracles) {
    try {
      let left = mostTold;
      for await (const message of examine(subject)) {
        if (left-- > 0) failures.push({ oracle: name, message });
      }
    } catch (error) {
      failures.push(thrown(name, error));
    }
  }
  return failures;
}

function thrown(oracle: string, error: unknown): Failure {
  const message = error instanceof Error ? `${error.message}\n${error.stack}` : String(error);
  return { oracle, message: `throws: ${message}` };
}
