import path from 'node:path';
import type { CheckedCourse, CheckResult, CourseEntry } from '../check/index.ts';
import { type Diagnostic, sortDiagnostics, UserError } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';
import { createOwnChecks } from '../own-rules/index.ts';
import {
  type CourseFiles,
  documentsOf,
  type FindOptions,
  findFiles,
  type SourceFile,
} from '../read/index.ts';
import {
  filesOfTranslation,
  findingsInTranslation,
  inTranslation,
  readTranslations,
  type Translation,
  type TranslationOptions,
} from '../translation/index.ts';
import {
  type CurrentCourse,
  createWorkspace,
  type KeptSyntax,
  loadKept,
  openSyntax,
  saveKept,
  type Workspace,
  type WorkspaceOptions,
} from '../workspace/index.ts';
import { cacheFolder } from './cache-folder.ts';
import { courseEdition } from './course-edition.ts';
import { keepComparisons } from './keep-comparisons.ts';
import { withKeptResults } from './kept-results.ts';
import { type LookAround, lookAbove } from './shelf/look-around.ts';

export interface LoadedCourse extends CheckResult {
  readonly course: Course;
  /** Files with engine results, of the course and of the cache. */
  readonly facts: readonly SourceFile[];
  readonly textOf: (file: string) => string | undefined;
  /** `CurrentCourse.print` */
  readonly print: (file: string) => string;
  /** `CurrentCourse.face` */
  readonly face: (file: string) => string;
  /** `CurrentCourse.entry` */
  readonly entry: () => CourseEntry;
  /** A hash of all that it was read from. */
  readonly edition: () => string;
  /** Of a translation: the folder of its pages below those of the original, which is its language tag. */
  readonly below?: string;
  /** Its translations, finished or not. */
  readonly translations: readonly Translation[];
}

export interface Progress {
  show(stage: string, done: number, all: number): void;
  clear(): void;
  /** Called before chapters are read, with how many were not kept. */
  reads?(chapters: number): void;
  /** Called before code of the course runs. */
  runsCode?(files: readonly string[]): void;
}

/** How a course in a folder is read. */
export interface FolderOptions extends FindOptions {
  readonly progress?: Progress | undefined;
  /** Finds its shelf; default: a `shelf.yaml` above it. */
  readonly lookAround?: LookAround | undefined;
  /** Its files, if `filesIn` has read them already. */
  readonly files?: CourseFiles | undefined;
}

/** Reads the files of the course in a folder, and what it may know of its shelf. */
export async function filesIn(
  folder: string,
  { lookAround = lookAbove, files: given, ...find }: Omit<FolderOptions, 'progress'> = {},
): Promise<CourseFiles> {
  if (given) return given;
  // The user named this folder, so its code may run.
  const files = await findFiles(folder, { lookForCode: true, ...find });
  const shelf = await lookAround(folder, files);
  return shelf === undefined ? files : { ...files, shelf };
}

/**
 * Reads, builds and checks the course in a folder: the one pipeline of all commands.
 * @throws NoCourseError where the folder is no course.
 */
export async function loadCourse(
  folder: string,
  options?: FolderOptions & { readonly drafts?: WorkspaceOptions['drafts'] },
): Promise<LoadedCourse> {
  return loadFiles(await filesIn(folder, options), {
    as: path.resolve(folder),
    drafts: options?.drafts,
    progress: options?.progress,
  });
}

/** The course as readers have it: without drafts. */
export function loadForReaders(folder: string, options?: FolderOptions): Promise<LoadedCourse> {
  return loadCourse(folder, { ...options, drafts: 'left out' });
}

/** The course as it is published: without drafts, and not while a to-do is open. */
export async function loadToPublish(
  folder: string,
  options?: FolderOptions & { readonly language?: string | undefined },
): Promise<LoadedCourse> {
  const loaded = unlessOpen(await loadForReaders(folder, options));
  const { language } = options ?? {};
  if (language === undefined || language === loaded.course.settings.language) return loaded;
  return loaded.checked ? loadInLanguage(folder, loaded, language, options) : loaded;
}

/**
 * The course in another language, as readers have it.
 * @throws UserError if it is not published in that language.
 */
async function loadInLanguage(
  where: string,
  original: LoadedCourse,
  language: string,
  { progress, ...find }: FolderOptions = {},
): Promise<LoadedCourse> {
  const translation = original.translations.find(({ tag }) => tag === language);
  if (!translation?.isPublished) {
    const { course, translations } = original;
    const published = translations.filter(({ isPublished }) => isPublished).map(({ tag }) => tag);
    const all = [course.settings.language, ...published].join(', ');
    throw new UserError(
      translation
        ? `nothing of the translation into \`${language}\` is ready to be published`
        : `the course has no translation into \`${language}\``,
      `it is published in ${all}; \`linewright translate ${language}\` tells what is missing`,
    );
  }
  const { folder } = translation;
  const ready = inTranslation(await findFiles(where, find), translation, 'ready');
  const as = path.join(path.resolve(where), folder);
  const loaded = unlessOpen(await loadFiles(ready, { as, drafts: 'left out', progress }));
  const own = findingsInTranslation(loaded.diagnostics, folder, filesOf(translation, 'ready'));
  return {
    ...loaded,
    below: language,
    diagnostics: sortDiagnostics([...original.diagnostics, ...own]),
    textOf: (file) => (file.startsWith(folder) ? original.textOf(file) : loaded.textOf(file)),
  };
}

/** A course whose chapters are read and played when somebody looks at them. */
export interface LazyCourse extends LoadedCourse {
  /** Keeps what has been read, for the next process. */
  keepRead(): Promise<void>;
  /** Its other published languages. */
  readonly languages: readonly LanguageEdition[];
}

/** The course in another language, as readers have it. */
export interface LanguageEdition {
  /** BCP 47. */
  readonly tag: string;
  /** Its folder, by which it is kept. */
  readonly as: string;
  readonly loaded: LazyCourse & { readonly checked: CheckedCourse };
}

/** Like `loadToPublish`, but lazy, and in all published languages. */
export async function loadLazilyToPublish(
  folder: string,
  { progress, ...find }: FolderOptions = {},
): Promise<LazyCourse> {
  const ownChecks = ownChecksFor(progress);
  const options: LoadOptions = {
    ...{ as: path.resolve(folder), drafts: 'left out', progress, ownChecks },
    releaseSyntax: true,
  };
  const files = await filesIn(folder, find);
  return withLanguages(unlessOpen(await loadFilesLazily(files, options)), files, options);
}

/** Loads the other published languages. An error in one stops all. */
async function withLanguages(
  course: LazyCourse,
  files: CourseFiles,
  options: LoadOptions,
): Promise<LazyCourse> {
  const languages: LanguageEdition[] = [];
  const found: Diagnostic[] = [];
  let isStopped = false;
  for (const translation of course.translations.filter(({ isPublished }) => isPublished)) {
    const { tag, folder } = translation;
    const as = path.join(options.as, folder);
    const ready = inTranslation(files, translation, 'ready');
    const loaded = unlessOpen(await loadFilesLazily(ready, { ...options, as }));
    const own = findingsInTranslation(loaded.diagnostics, folder, filesOf(translation, 'ready'));
    found.push(...own);
    const { checked } = loaded;
    if (checked) languages.push({ tag, as, loaded: { ...loaded, checked } });
    else {
      isStopped = true;
      // An error in none of its own files is one of the original, or else nobody would report it.
      const isTold = [...own, ...course.diagnostics].some(({ severity }) => severity === 'error');
      if (!isTold) found.push(...loaded.diagnostics);
    }
  }
  const { checked, ...rest } = course;
  return {
    ...rest,
    ...(checked && !isStopped && { checked }),
    diagnostics: sortDiagnostics([...course.diagnostics, ...found]),
    languages,
  };
}

/** The files of a translation, by the names of their originals. */
export function filesOf(
  { chapters, files, folder }: Translation,
  which: 'ready' | 'written',
): ReadonlySet<string> {
  return new Set([
    ...[...chapters].flatMap(([file, { isReady }]) =>
      isReady || which === 'written' ? [file] : [],
    ),
    ...files.news.map(({ path: file }) => file.slice(folder.length + 1)),
  ]);
}

function unlessOpen<Loaded extends LoadedCourse>({ checked, ...loaded }: Loaded) {
  const set = loaded.course.settings.rules['todo-open'];
  const diagnostics = loaded.diagnostics.map((finding) =>
    finding.rule === 'todo-open' && set === undefined
      ? { ...finding, severity: 'error' as const }
      : finding,
  );
  const isStopped = diagnostics.some(
    (finding) => finding.rule === 'todo-open' && finding.severity === 'error',
  );
  return { ...loaded, diagnostics, ...(checked && !isStopped && { checked }) };
}

/** Chapters from which progress is shown: fewer would only flicker. */
const manyChapters = 20;

export interface LoadOptions {
  readonly drafts?: WorkspaceOptions['drafts'];
  readonly releaseSyntax?: WorkspaceOptions['releaseSyntax'];
  /** The folder that it is kept by. */
  readonly as: string;
  readonly progress?: Progress | undefined;
  /** Runs the course's own rules; its languages share one. */
  readonly ownChecks?: OwnChecksMaker | undefined;
}

type OwnChecksMaker = ReturnType<typeof createOwnChecks>;

function ownChecksFor(progress: Progress | undefined): OwnChecksMaker {
  return createOwnChecks({ onRun: (code) => progress?.runsCode?.(code) });
}

/** Plays and checks a course, wherever its files come from. */
export async function loadFiles(files: CourseFiles, options: LoadOptions): Promise<LoadedCourse> {
  const { keepRead, languages: _, ...loaded } = await loadFilesLazily(files, options);
  lookAtAll(loaded.course);
  await keepRead();
  return loaded;
}

/** Asking for the graph plays all chapters at once instead of one by one. */
function lookAtAll({ graph: _ }: Course): void {}

async function loadFilesLazily(files: CourseFiles, options: LoadOptions): Promise<LazyCourse> {
  const syntaxes = await openSyntax(cacheFolder(), options.as);
  const opened = await openFiles(files, options, syntaxes);
  return {
    ...loadedFrom(opened),
    keepRead: () => syntaxes.save(opened.workspace.kept()),
    languages: [],
  };
}

/** An opened course with its model. */
export function loadedFrom(opened: OpenedCourse): LoadedCourse {
  const { current, facts, textOf, edition, translations } = opened;
  const checked = current.checked();
  return {
    diagnostics: current.diagnostics,
    ...(checked && { checked }),
    course: current.course(),
    facts,
    textOf,
    print: current.print,
    face: current.face,
    entry: current.entry,
    edition,
    translations,
  };
}

/**
 * Opens the course in a folder, using and renewing what is kept of it, with the findings of its translations.
 * @throws NoCourseError where the folder is no course.
 */
export async function openToCheck(folder: string, { progress, ...find }: FolderOptions = {}) {
  const files = await filesIn(folder, find);
  const ownChecks = ownChecksFor(progress);
  const options = { as: path.resolve(folder), progress, ownChecks };
  const opened = await openFiles(files, options);
  if (opened.translations.length === 0) return opened;
  const found: Diagnostic[] = [];
  for (const translation of opened.translations) {
    const as = path.join(options.as, translation.folder);
    const { current } = await openFiles(inTranslation(files, translation, 'written'), {
      as,
      ownChecks,
    });
    const own = filesOf(translation, 'written');
    found.push(...findingsInTranslation(current.diagnostics, translation.folder, own));
  }
  const diagnostics = sortDiagnostics([...opened.current.diagnostics, ...found]);
  const current: CurrentCourse = Object.create(opened.current, {
    diagnostics: { value: diagnostics },
  });
  return { ...opened, current };
}

/** Opens a course with what an earlier process kept of it, which is kept again for the next. */
export async function openFiles(
  found: CourseFiles,
  { as, drafts, releaseSyntax, progress, ownChecks = ownChecksFor(progress) }: LoadOptions,
  syntaxes?: KeptSyntax,
) {
  const cache = cacheFolder();
  const files = await withKeptResults(found, cache, as);
  const { length } = files.chapters;
  if (length >= manyChapters) progress?.show(`reading ${length} chapters`, 0, 0);
  const onProgress = (done: number, all: number) => {
    if (all >= manyChapters) progress?.show(`checking chapters: ${done}/${all}`, 0, 0);
  };
  const kept = await loadKept(cache, as);
  progress?.reads?.(length - kept.length);
  const workspace = createWorkspace({
    kept,
    syntaxes,
    releaseSyntax,
    drafts,
    onProgress,
    ownChecks,
  });
  const comparisons = files.translations && (await keepComparisons(cache, as));
  const opened = updateWith(files, workspace, comparisons?.recall);
  await comparisons?.save();
  const { read, checked } = opened.current.work;
  progress?.clear();
  if (read.length + checked.length > 0) await saveKept(cache, as, workspace.kept());
  return { ...opened, workspace };
}

/** Makes a workspace current with a course. @param as what it is kept by. */
export async function updateFiles(
  files: CourseFiles,
  workspace: Workspace,
  as: string,
): Promise<OpenedCourse> {
  return updateWith(await withKeptResults(files, cacheFolder(), as), workspace);
}

interface OpenedCourse extends Pick<LoadedCourse, 'facts' | 'textOf' | 'edition' | 'translations'> {
  readonly current: CurrentCourse;
}

function updateWith(
  found: CourseFiles,
  workspace: Workspace,
  recall?: TranslationOptions['recall'],
): OpenedCourse {
  const translations = readTranslations(found, { recall });
  const files = {
    ...found,
    problems: [...found.problems, ...translations.flatMap(({ problems }) => problems)],
  };
  const { games, news = [], facts = [], rules = [], settings } = files;
  const texts = new Map<string, SourceFile>();
  const documents = documentsOf(files);
  const besides = [...games, ...news, ...facts, ...rules, ...(settings ? [settings] : [])];
  const translated = translations.flatMap((each) => filesOfTranslation(each.files));
  for (const file of [...documents, ...besides, ...translated]) {
    texts.set(file.path, file);
  }
  const current = workspace.update(files);
  return {
    current,
    facts,
    textOf: (file) => texts.get(file)?.text,
    edition: () => courseEdition(current.files, current.siblings),
    translations,
  };
}
