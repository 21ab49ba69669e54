import type { OwnChecks } from '../check/index.ts';
import type { PlayedChapter } from '../model/index.ts';
import {
  type ChapterOptions,
  type FilesBeside,
  readChapter,
  type SourceFile,
} from '../read/index.ts';
import type { KeptChapter, KeptPlay } from './kept-chapter.ts';
import type { KeptSyntax, ReadChapter } from './kept-syntax.ts';
import { type AskedOfFiles, hashOfFile, noteQuestions, printAnswer } from './questions.ts';

export interface UpdateOptions extends Pick<ChapterOptions, 'frontMatter'> {
  /** Runs the course's own rules and claims; without it they do not run. */
  readonly ownChecks?:
    | ((files: readonly SourceFile[], named: readonly string[]) => OwnChecks)
    | undefined;
  /** Chapters that earlier processes have read. */
  readonly syntaxes?: KeptSyntax | undefined;
  /** Called as chapters are checked, with the number of those that have to be. */
  readonly onProgress?: ((done: number, all: number) => void) | undefined;
}

/** A chapter during an update: the only mutable data of this room. */
export class ChapterNow {
  readonly file: string;
  /** Hash of its text. */
  readonly text: string;
  /** What was kept of it before, if of the same text. */
  readonly before: KeptChapter | undefined;
  /** What is kept of it and, as far as known, still valid. */
  kept: KeptChapter | undefined;
  /** The chapter as played by this process. */
  played: PlayedChapter | undefined;
  /** Whether this process has parsed it, now or before. */
  wasRead = false;
  /** Whether this update has parsed it. */
  isRead = false;
  private source: SourceFile;
  private beside: FilesBeside;
  private options: Pick<ChapterOptions, 'frontMatter'>;
  private syntaxes: KeptSyntax | undefined;
  private read: ReadChapter | undefined;

  constructor(
    source: SourceFile,
    before: KeptChapter | undefined,
    settings: string,
    beside: FilesBeside,
    { syntaxes, ...options }: UpdateOptions,
  ) {
    this.file = source.path;
    this.text = hashOfFile(source);
    this.source = source;
    this.beside = beside;
    this.options = options;
    this.syntaxes = syntaxes;
    if (before === undefined || before.text !== this.text) return;
    const { asked, live } = before;
    if (!this.stillHolds(asked)) return;
    this.before = before;
    if (live) {
      this.read = { syntax: live.syntax, asked };
      this.wasRead = live.wasRead;
    }
    if (before.settings !== settings) return;
    this.kept = before;
    this.played = live?.played;
  }

  /** Its syntax, and what parsing it asked of the other files. */
  syntax(): ReadChapter {
    if (this.read) return this.read;
    const before = this.syntaxes?.get(this.file, this.text);
    if (before && this.stillHolds(before.asked)) {
      this.read = before;
      return before;
    }
    const { files, asked } = noteQuestions(this.beside);
    const syntax = readChapter(this.source, { ...this.options, ...files });
    this.read = { syntax, asked: asked() };
    this.wasRead = true;
    this.isRead = true;
    return this.read;
  }

  private stillHolds(asked: readonly AskedOfFiles[]): boolean {
    return asked.every(([kind, about, print]) => printAnswer(this.beside, kind, about) === print);
  }

  /** Drops what is kept of it, but not its syntax. */
  forget(): void {
    this.kept = undefined;
    this.played = undefined;
  }

  /** Its play as other chapters see it. */
  play(): Pick<KeptPlay, 'names' | 'elsewhere' | 'isCircular'> {
    const play = this.played ?? this.kept?.played;
    if (play === undefined) throw new Error(`${this.file} has not been played`);
    return play;
  }
}
