import type { PlayedChapter } from '../model/index.ts';
import {
  type ChapterOptions,
  type ChapterSyntax,
  type FilesBeside,
  readChapter,
  type SourceFile,
} from '../read/index.ts';
import type { KeptChapter, KeptPlay } from './kept-chapter.ts';
import { type AskedOfFiles, hashOfFile, noteQuestions, printAnswer } from './questions.ts';

/** A chapter while its course is made current: the only mutable data of this room. */
export class ChapterNow {
  readonly file: string;
  /** Hash of its text. */
  readonly text: string;
  /** What is kept of it and, as far as is known, still holds. */
  kept: KeptChapter | undefined;
  /** The chapter on the board, where this process has played it. */
  played: PlayedChapter | undefined;
  /** Whether it was read anew. */
  wasRead = false;
  private source: SourceFile;
  private beside: FilesBeside;
  private options: Pick<ChapterOptions, 'frontMatter'>;
  private read: { syntax: ChapterSyntax; asked: readonly AskedOfFiles[] } | undefined;

  constructor(
    source: SourceFile,
    before: KeptChapter | undefined,
    settings: string,
    beside: FilesBeside,
    options: Pick<ChapterOptions, 'frontMatter'>,
  ) {
    this.file = source.path;
    this.text = hashOfFile(source);
    this.source = source;
    this.beside = beside;
    this.options = options;
    if (before === undefined || before.text !== this.text) return;
    const { asked, live } = before;
    if (asked.some(([kind, about, print]) => printAnswer(beside, kind, about) !== print)) return;
    if (live) this.read = { syntax: live.syntax, asked };
    if (before.settings !== settings) return;
    this.kept = before;
    this.played = live?.played;
  }

  /** Its syntax, and what reading it asked of the files beside it. */
  syntax(): { readonly syntax: ChapterSyntax; readonly asked: readonly AskedOfFiles[] } {
    if (this.read) return this.read;
    const { files, asked } = noteQuestions(this.beside);
    const syntax = readChapter(this.source, { ...this.options, ...files });
    this.read = { syntax, asked: asked() };
    this.wasRead = true;
    return this.read;
  }

  /** Takes what is kept of it for stale; what was read stays. */
  forget(): void {
    this.kept = undefined;
    this.played = undefined;
  }

  /** What became of it on the board, as other chapters see it. */
  play(): Pick<KeptPlay, 'names' | 'elsewhere' | 'isCircular'> {
    const play = this.played ?? this.kept?.played;
    if (play === undefined) throw new Error(`${this.file} has not been played`);
    return play;
  }
}
