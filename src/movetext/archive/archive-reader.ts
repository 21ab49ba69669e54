import { createUtf8Stream, decodeKnown } from './encoding.ts';
import { type GameBytes, GameSplitter } from './split-games.ts';

/** A game of a PGN file as text. */
export interface ArchiveGame {
  readonly text: string;
  /** The line of the file that it begins in, from 1. */
  readonly line: number;
  /** Whether it is longer than any game can be; then `text` is its beginning. */
  readonly tooLong: boolean;
  /** Whether it is neither UTF-8 nor Latin-1, but has signs that Windows-1252 adds. */
  readonly isWindows?: boolean;
}

export interface ArchiveReader {
  /**
   * The games that end within the bytes given so far, in the order of the file. They are read as the
   * caller asks for them, and all before the next call; the bytes may change after it.
   */
  readonly push: (chunk: Uint8Array) => Iterable<ArchiveGame>;
  /** The rest. */
  readonly end: () => Iterable<ArchiveGame>;
}

/**
 * The one reader of PGN files, of any size and in pieces of any size. A game that is not UTF-8 is
 * read as ISO 8859-1, which section 4.1 of the PGN standard asks for, and a file in UTF-16 as such.
 */
export function createArchiveReader(): ArchiveReader {
  const utf8 = createUtf8Stream();
  const splitter = new GameSplitter();
  return {
    push: (chunk) => textsOf(splitter.push(utf8.push(chunk))),
    end: function* end() {
      yield* textsOf(splitter.push(utf8.end()));
      yield* textsOf(splitter.end());
    },
  };
}

function* textsOf(games: readonly GameBytes[]): Generator<ArchiveGame> {
  for (const { bytes, line, tooLong } of games) yield { ...decodeKnown(bytes), line, tooLong };
}
