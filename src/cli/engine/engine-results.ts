import path from 'node:path';
import { UserError } from '../../diagnostics/index.ts';
import { type EngineFact, factName, makeFactsFile, parseFactsFile } from '../../facts/index.ts';
import {
  FileRefusedError,
  listFolder,
  readPlainFile,
  refusals,
  replaceFile,
} from '../../files/index.ts';
import { cacheFolder, readKeptResults, writeKeptResults } from '../../pipeline/index.ts';
import { engineFile, gamesLimit } from '../../read/index.ts';
import type { ResultPlace } from './result-places.ts';

/** Where an engine's results for a course are kept. */
export interface EngineResults {
  /** The place in words. */
  readonly place: string;
  readonly known: readonly EngineFact[];
  /**
   * Adds results to the file as it stands now.
   * @param isNeeded drops results of other positions.
   */
  readonly save: (
    facts: readonly EngineFact[],
    isNeeded?: (fact: EngineFact) => boolean,
  ) => Promise<void>;
}

/**
 * Opens the results of a course.
 * @throws UserError if a line cannot be read: saving would lose it.
 * @throws FileRefusedError for a link, or what is no file.
 */
export async function openResults(folder: string, keep: ResultPlace): Promise<EngineResults> {
  const course = path.resolve(folder);
  const { place, read, write } =
    keep === 'course' ? inCourse(folder) : inCache(cacheFolder(), course);
  const parse = async (): Promise<readonly EngineFact[]> => {
    const { facts, faults } = parseFactsFile(await read());
    const [fault] = faults;
    if (fault) {
      throw new UserError(
        `line ${fault.line} of ${place} cannot be read: ${fault.reason}`,
        'take the line out, and the positions will be looked at again',
      );
    }
    return facts;
  };
  return {
    place,
    known: await parse(),
    async save(facts, isNeeded = () => true) {
      const all = new Map((await parse()).map((fact) => [factName(fact), fact]));
      for (const fact of facts) all.set(factName(fact), fact);
      await write(makeFactsFile([...all.values()].filter(isNeeded)));
    },
  };
}

interface Place {
  readonly place: string;
  /** Empty where nothing is kept. */
  readonly read: () => Promise<string>;
  readonly write: (text: string) => Promise<void>;
}

function inCourse(folder: string): Place {
  return {
    place: path.join(folder, engineFile),
    async read() {
      try {
        // Refuses a link, which may lead out of the course.
        await listFolder(folder, path.posix.dirname(engineFile));
        const { bytes, size } = await readPlainFile(folder, engineFile, gamesLimit);
        if (size <= gamesLimit) return Buffer.from(bytes).toString('utf8');
      } catch (error) {
        if (isMissing(error)) return '';
        throw error;
      }
      throw new UserError(`${engineFile} is too large`, 'take out lines that are not needed');
    },
    write: (text) => replaceFile(path.join(folder, ...engineFile.split('/')), text),
  };
}

function inCache(cache: string, course: string): Place {
  return {
    place: 'the cache',
    read: async () => (await readKeptResults(cache, course)) ?? '',
    write: (text) => writeKeptResults(cache, course, text),
  };
}

function isMissing(error: unknown): boolean {
  return error instanceof FileRefusedError && error.message === refusals.missing.message;
}
