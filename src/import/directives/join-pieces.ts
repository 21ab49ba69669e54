import type { Piece } from './piece-of-game.ts';

export interface JoinedFile {
  /** Relative to the course folder, with `/`. */
  readonly path: string;
  readonly text: string;
}

/** Files of a course, and no others: a PGN file may come from anybody. */
const chapterPath = /^chapters\/[\p{L}\p{N}][\p{L}\p{N} ._-]{0,100}\.md$/u;

export interface PieceJoiner {
  readonly add: (piece: Piece) => void;
  readonly isEmpty: () => boolean;
  /** The settings, where there were any, and the chapters in the order of their first pieces. */
  readonly files: () => { readonly settings?: string; readonly chapters: readonly JoinedFile[] };
}

/** Puts the pieces of chapters together again. */
export function createPieceJoiner(): PieceJoiner {
  let settings: string | undefined;
  const chapters = new Map<string, { title: string; front?: string; texts: string[] }>();
  return {
    add({ kind, file, title, text }) {
      if (kind === 'course') {
        settings ??= text;
        return;
      }
      const chapter = chapters.get(file) ?? { title, texts: [] };
      chapters.set(file, chapter);
      if (kind === 'chapter') chapter.front ??= text;
      else chapter.texts.push(text);
    },
    isEmpty: () => settings === undefined && chapters.size === 0,
    files: () => ({
      ...(settings !== undefined && { settings: `${settings}\n` }),
      chapters: [...chapters].map(([file, { title, front, texts }], index) => {
        const path = chapterPath.test(file) ? file : `chapters/${index + 1}-chapter.md`;
        const head = front ?? `title: ${JSON.stringify(title)}`;
        return { path, text: `---\n${head}\n---\n\n${texts.join('\n\n')}\n` };
      }),
    }),
  };
}
