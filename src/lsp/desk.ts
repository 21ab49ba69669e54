import path from 'node:path';
import type { Diagnostic, Place } from '../diagnostics/index.ts';
import { type Chapter, type Course, chapterAt } from '../model/index.ts';
import { type CourseFiles, documentsOf, NoCourseError, type SourceFile } from '../read/index.ts';
import { filesOfTranslation, withTranslationProblems } from '../translation/index.ts';
import { type CurrentCourse, type Workspace, withUnsaved } from '../workspace/index.ts';
import { pathInCourse, uriOf } from './addresses.ts';
import { type OpenText, openText, textOf } from './open-text.ts';

/** What the server asks of the program around it. */
export interface Host {
  readonly version: string;
  /** Where the handbook is published; absent where it is nowhere. */
  readonly handbook?: string | undefined;
  /**
   * The files of the course in a folder, as `check` takes them.
   * @throws NoCourseError where the folder is no course.
   */
  readonly readFiles: (folder: string) => Promise<CourseFiles>;
  /** A workspace for it, with what is kept. */
  readonly openWorkspace: (folder: string) => Promise<Workspace>;
}

/** A course that is being written, with the texts of an editor in the place of those on the disk. */
export class Desk {
  readonly folder: string;
  /** Milliseconds that the last check took. */
  cost = 0;
  lastFindings: readonly Diagnostic[] = [];
  private readonly host: Host;
  private readonly opened: (file: string) => OpenText | undefined;
  private readonly allOpened: () => Iterable<readonly [file: string, text: OpenText]>;
  private workspace: Workspace | undefined;
  private disk: CourseFiles | undefined;
  private found: CurrentCourse | undefined;
  private files: CourseFiles | undefined;
  private reading: Promise<void> | undefined;
  private isStale = true;
  private readonly closed = new WeakMap<SourceFile, OpenText>();

  constructor(folder: string, host: Host, opened: ReadonlyMap<string, OpenText>) {
    this.folder = folder;
    this.host = host;
    this.opened = (file) => opened.get(this.fullPath(file));
    this.allOpened = function* () {
      for (const [file, text] of opened) yield [pathInCourse(folder, file), text];
    };
  }

  /** Reads what is on the disk anew; one reading at a time. */
  async refresh(): Promise<void> {
    await this.reading?.catch(() => {});
    this.reading = this.readDisk();
    await this.reading;
  }

  async ready(): Promise<void> {
    if (this.disk) return;
    this.reading ??= this.readDisk();
    await this.reading;
  }

  private async readDisk(): Promise<void> {
    try {
      this.workspace ??= await this.host.openWorkspace(this.folder);
      this.disk = await this.host.readFiles(this.folder);
    } catch (error) {
      if (!(error instanceof NoCourseError)) throw error;
      this.disk = undefined;
      this.reading = undefined;
    } finally {
      this.isStale = true;
    }
  }

  touch(): void {
    this.isStale = true;
  }

  /** The course as it was when it was made current last. */
  last(): CurrentCourse | undefined {
    return this.found;
  }

  /** The course, not yet checked, with the texts as they are now; undefined where the folder is no course any more. */
  now(): CurrentCourse | undefined {
    if (!this.isStale) return this.found;
    if (!this.disk || !this.workspace) {
      this.found = undefined;
      return undefined;
    }
    const unsaved = new Map<string, string>();
    for (const [file, text] of this.allOpened()) {
      if (!file.startsWith('..')) unsaved.set(file, textOf(text));
    }
    this.files = withUnsaved(this.disk, unsaved);
    this.found = this.workspace.update(withTranslationProblems(this.files));
    this.isStale = false;
    return this.found;
  }

  diagnostics(): readonly Diagnostic[] {
    const start = performance.now();
    this.lastFindings = this.now()?.diagnostics ?? [];
    this.cost = performance.now() - start;
    return this.lastFindings;
  }

  course(): Course | undefined {
    return this.now()?.course();
  }

  chapter(file: string): Chapter | undefined {
    const course = this.course();
    return course && chapterAt(course, { chapter: file });
  }

  facts(): readonly SourceFile[] {
    return this.files?.facts ?? [];
  }

  games(): readonly string[] {
    return this.files?.games.map((game) => game.path) ?? [];
  }

  fullPath(file: string): string {
    return path.join(this.folder, ...file.split('/'));
  }

  /** A file of the course, open or not; one that is no text has none. */
  text(file: string): OpenText {
    const open = this.opened(file);
    if (open) return open;
    const { settings, games = [], news = [], facts = [] } = this.files ?? {};
    const documents = this.files ? documentsOf(this.files) : [];
    const translated = (this.files?.translations ?? []).flatMap(filesOfTranslation);
    const others = [...games, ...news, ...facts, ...translated, ...(settings ? [settings] : [])];
    const source = [...documents, ...others].find((one) => one.path === file);
    const uri = uriOf(this.fullPath(file));
    if (!source) return openText(uri, null, '');
    const known = this.closed.get(source);
    if (known) return known;
    const text = openText(uri, null, source.text);
    this.closed.set(source, text);
    return text;
  }

  textAt({ file, start, end }: Place): string {
    return textOf(this.text(file)).slice(start.offset, end.offset);
  }
}
