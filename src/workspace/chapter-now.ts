import type { OwnChecks } from '../check/index.ts';
import { type PlayedChapter, withLateBody } from '../model/index.ts';
import {
  type ChapterOptions,
  type ChapterSyntax,
  type FilesBeside,
  readChapter,
  type SourceFile,
} from '../read/index.ts';
import type { KeptChapter, KeptPlay } from './kept/kept-chapter.ts';
import type { KeptSyntax, ReadChapter } from './kept/kept-syntax.ts';
import { type AskedOfFiles, hashOfFile, noteQuestions, printAnswer } from './questions.ts';

export interface UpdateOptions extends Pick<ChapterOptions, 'frontMatter'> {
  /** Runs the course's own rules and claims; without it they do not run. */
  readonly ownChecks?:
    | ((files: readonly SourceFile[], named: readonly string[]) => OwnChecks)
    | undefined;
  /** Chapters that earlier processes have read. */
  readonly syntaxes?: KeptSyntax | undefined;
  /** Releases the syntax tree of each chapter after its check. For a build, which needs it once more, chapter by chapter. */
  readonly releaseSyntax?: boolean | undefined;
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
  private releasesSyntax: boolean;
  private read: ReadChapter | undefined;
  private askedOfFiles: readonly AskedOfFiles[] | undefined;

  constructor(
    source: SourceFile,
    before: KeptChapter | undefined,
    settings: string,
    beside: FilesBeside,
    { syntaxes, releaseSyntax = false, ...options }: UpdateOptions,
  ) {
    this.file = source.path;
    this.text = hashOfFile(source);
    this.source = source;
    this.beside = beside;
    this.options = options;
    this.syntaxes = syntaxes;
    this.releasesSyntax = releaseSyntax;
    if (before === undefined || before.text !== this.text) return;
    const { asked, live } = before;
    if (!this.stillHolds(asked)) return;
    this.before = before;
    if (live) {
      this.askedOfFiles = asked;
      if (live.syntax) this.read = { syntax: live.syntax, asked };
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
    this.read = readFrom(this.source, this.beside, this.options);
    this.wasRead = true;
    this.isRead = true;
    return this.read;
  }

  /** Its syntax, unless that was released. */
  syntaxHere(): ChapterSyntax | undefined {
    return this.read?.syntax;
  }

  /** What reading it asked of the files beside it. */
  asked(): readonly AskedOfFiles[] {
    return this.askedOfFiles ?? this.syntax().asked;
  }

  /** Moves its syntax from memory to the disk, if `releaseSyntax` is set. */
  release(): void {
    const { file, text, source, beside, options, syntaxes, read, played } = this;
    if (!this.releasesSyntax || !syntaxes || !read || !played) return;
    if (this.wasRead) syntaxes.set(file, text, read);
    this.askedOfFiles = read.asked;
    this.read = undefined;
    const again = () => syntaxes.body(file, text) ?? readFrom(source, beside, options).syntax.body;
    this.played = { ...played, chapter: withLateBody(played.chapter, again) };
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

function readFrom(
  source: SourceFile,
  beside: FilesBeside,
  options: Pick<ChapterOptions, 'frontMatter'>,
): ReadChapter {
  const { files, asked } = noteQuestions(beside);
  const syntax = readChapter(source, { ...options, ...files });
  return { syntax, asked: asked() };
}
