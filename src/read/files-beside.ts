import type { PiecesLanguage } from '../chess/index.ts';
import type { MediaFault } from '../media/index.ts';
import { documentsOf } from './documents.ts';
import { piecesOf } from './settings/read-settings.ts';
import type { CourseFiles, SourceFile } from './types.ts';

/** What a chapter may name of the course's files. */
export interface FilesBeside {
  readonly media: ReadonlySet<string>;
  readonly unfit: ReadonlyMap<string, MediaFault>;
  /** The chapters, and the pages beside them. */
  readonly chapters: ReadonlySet<string>;
  readonly games: ReadonlyMap<string, SourceFile>;
  /** The language whose piece letters the files use; absent for those of SAN. */
  readonly pieces?: PiecesLanguage | undefined;
}

export function filesBeside(files: CourseFiles): FilesBeside {
  const { games, media, settings, unfit = new Map() } = files;
  return {
    media: new Set(media),
    unfit,
    chapters: new Set(documentsOf(files).map(({ path }) => path)),
    games: new Map(games.map((game) => [game.path, game])),
    pieces: settings && piecesOf(settings),
  };
}
