import {
  type ChapterSummary,
  type CheckedChapter,
  type CheckOptions,
  checkOptions,
  makeCourseIndex,
  type OwnChecks,
  passCourse,
  readFacts,
  reportFindings,
  summariseChapter,
} from '../check/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import {
  assembleCourse,
  type Chapter,
  type ChapterFront,
  type Course,
  faceOfChapter,
  findUnsought,
  frontOf,
  joinFrame,
  modelLimits,
} from '../model/index.ts';
import {
  type CourseFiles,
  type CourseFrame,
  type CourseProblem,
  documentsOf,
  filesBeside,
  isPageFile,
  readFrame,
  repeatedIds,
} from '../read/index.ts';
import { ChapterNow, type UpdateOptions } from './chapter-now.ts';
import { checkLater } from './check-later.ts';
import { printAnswers } from './kept/held-for.ts';
import type { KeptChapter } from './kept/kept-chapter.ts';
import { hasCircle, printName } from './name-prints.ts';
import { type OnShelf, onShelf } from './on-shelf.ts';
import {
  mergedChapter,
  type PlayedCourse,
  playCurrent,
  playWhere,
  printSaid,
} from './play-current.ts';
import { hashOf } from './questions.ts';
import type { CurrentCourse } from './workspace.ts';

/** A course made current. */
export interface Update {
  readonly current: CurrentCourse;
  /** Checks all chapters when asked. Ask late, so that what is read for the whole model is kept too. */
  readonly chapters: readonly KeptChapter[];
  /** The same without checking: a chapter not yet checked has what was kept before. */
  readonly soFar: readonly KeptChapter[];
}

/**
 * Makes a course current: parses and plays what a change touches. It is checked when findings are first asked for, so
 * that questions about moves do not wait.
 */
export function updateCourse(
  files: CourseFiles,
  before: ReadonlyMap<string, KeptChapter>,
  options: UpdateOptions,
): Update {
  const beside = filesBeside(files);
  const read = readFrame(files, beside);
  const check = checkOptions(read.settings, ownChecks(read.settings, files, options));
  const { side, own } = check;
  const settings = printSettings(check);
  const { facts, problems } = readFacts(files.facts);
  const chapters = documentsOf(files).map(
    (source) => new ChapterNow(source, before.get(source.path), settings, beside, options),
  );
  const course = playCurrent(chapters, side);
  const played = namesOf(chapters, ({ kept }) => kept === undefined);
  const summaries = chapters.map((chapter) => summaryOf(chapter, course, side));
  const index = makeCourseIndex(summaries, facts, files.shelf);
  const drafts = () => namesOf(chapters, (chapter) => frontNow(chapter).draft === true);
  const shelf = onShelf(files, read, summaries, index, drafts);
  const answers = () => printAnswers(summaries, files);
  const checks = checkLater(chapters, course, index, { ...options, ...check, answers });
  const frame = joinProblems(read, shelf, [...repeatedIds(summaries), ...problems]);
  const patterns = summaries.map((summary) => summary.patterns);
  const unsought = findUnsought(patterns, index.positions.size, modelLimits);
  let found: readonly Diagnostic[] | undefined;
  const diagnostics = () => {
    found ??= reportFindings(
      checks.all().flatMap(({ findings }) => findings),
      { ...joinFrame(frame, unsought), summaries, index, own },
    );
    return found;
  };
  const whole = wholeChapters(chapters, course, side);
  let model: Course | undefined;
  const makeModel = () => {
    model ??= assembleCourse(
      frame,
      chapters.map((chapter, at) => ({
        front: frontNow(chapter),
        names: chapter.play().names,
        outline: summaries[at],
        whole: () => whole(chapter),
      })),
      unsought,
    );
    return model;
  };
  const keepAll = (done: readonly CheckedChapter[] | undefined) =>
    chapters.flatMap((chapter, at) => {
      const result = done?.[at] ?? chapter.kept?.checked;
      const kept = result
        ? keep(chapter, summaries[at], result, { settings, course })
        : chapter.before;
      return kept ?? [];
    });
  let prints: ReadonlyMap<string, string> | undefined;
  const current: CurrentCourse = {
    get diagnostics() {
      return diagnostics();
    },
    files,
    chapters: files.chapters.length,
    positions: countPositions(index, summaries),
    course: makeModel,
    ...shelf,
    checked: () =>
      diagnostics().some(({ severity }) => severity === 'error')
        ? undefined
        : passCourse(makeModel(), diagnostics()),
    print(file) {
      prints ??= printChapters(keepAll(checks.all()), course);
      return prints.get(file) ?? '';
    },
    face(file) {
      const at = chapters.findIndex((chapter) => chapter.file === file);
      const [chapter, summary] = [chapters[at], summaries[at]];
      return chapter ? hashOf(faceOfChapter(whole(chapter), summary?.targets.ids ?? [])) : '';
    },
    work: {
      read: namesOf(chapters, ({ isRead }) => isRead),
      played,
      get checked() {
        const all = checks.all();
        return namesOf(chapters, ({ kept }, at) => kept?.checked !== all[at]);
      },
    },
  };
  return {
    current,
    get chapters() {
      return keepAll(checks.all());
    },
    get soFar() {
      return keepAll(checks.soFar());
    },
  };
}

/** Positions of chapters; pages add none. */
function countPositions(
  { positions }: ReturnType<typeof makeCourseIndex>,
  summaries: readonly ChapterSummary[],
): number {
  if (!summaries.some(({ file, blocks }) => blocks.length > 0 && isPageFile(file)))
    return positions.size;
  const shown = [...positions.values()];
  return shown.filter(({ at }) => at.some(({ chapter }) => !isPageFile(chapter))).length;
}

function joinProblems(
  read: CourseFrame,
  { siblings }: OnShelf,
  more: readonly CourseProblem[],
): CourseFrame {
  return { ...read, ...(siblings && { siblings }), problems: [...read.problems, ...more] };
}

/** A print of the settings that findings depend on. */
function printSettings({ side, language, margins, own, off }: CheckOptions): string {
  const code = own.print === '' ? [] : [own.print];
  return [side, language, ...[...off].sort(), JSON.stringify(margins), ...code].join(' ');
}

/** The course's own rules and claims, if its settings name existing files and the caller runs them. */
function ownChecks(
  { ownRules }: Course['settings'],
  { rules }: CourseFiles,
  options: UpdateOptions,
): OwnChecks | undefined {
  if (ownRules.length === 0 || rules === undefined) return undefined;
  return options.ownChecks?.(rules, ownRules);
}

/** Share of the chapters that are played one by one: whoever needs more will need all. */
const fewChapters = 1 / 8;

/** Gives played chapters, each made when first asked for. */
function wholeChapters(
  chapters: readonly ChapterNow[],
  course: PlayedCourse,
  side: Course['settings']['side'],
): (chapter: ChapterNow) => Chapter {
  const made = new Map<ChapterNow, Chapter>();
  let alone = 0;
  return (chapter) => {
    if (chapter.played === undefined) {
      alone += 1;
      const isOne = alone <= chapters.length * fewChapters;
      playWhere(chapters, (each) => !each.played && (!isOne || each === chapter), side);
    }
    const known = made.get(chapter) ?? mergedChapter(chapter, course);
    made.set(chapter, known);
    return known;
  };
}

function frontNow({ kept, played, file }: ChapterNow): ChapterFront {
  const front = kept?.front ?? (played && frontOf(played.chapter));
  if (front === undefined) throw new Error(`${file} has not been played`);
  return front;
}

function summaryOf(
  chapter: ChapterNow,
  course: PlayedCourse,
  side: Course['settings']['side'],
): ChapterSummary {
  return chapter.kept?.summary ?? summariseChapter(mergedChapter(chapter, course), side);
}

function keep(
  chapter: ChapterNow,
  summary: ChapterSummary | undefined,
  checked: CheckedChapter,
  {
    settings,
    course: { names, said },
  }: { readonly settings: string; readonly course: PlayedCourse },
): KeptChapter {
  const { kept, played, file, text } = chapter;
  if (!summary) throw new Error(`${file} has not been summarised`);
  const syntax = chapter.syntaxHere();
  const live = played && {
    live: { ...(syntax && { syntax }), played, wasRead: chapter.wasRead },
  };
  if (kept)
    return kept.checked === checked && (kept.live || !live) ? kept : { ...kept, checked, ...live };
  if (!played) throw new Error(`${file} has not been played`);
  return {
    file,
    text,
    asked: chapter.asked(),
    settings,
    front: frontNow(chapter),
    played: {
      names: played.names,
      elsewhere: played.elsewhere,
      asked: played.asked.map((name) => [name, printName(names.get(name))] as const),
      isCircular: played.isCircular,
    },
    said: printSaid(said.get(file)),
    summary,
    checked,
    ...live,
  };
}

function printChapters(
  chapters: readonly KeptChapter[],
  { names }: PlayedCourse,
): ReadonlyMap<string, string> {
  // The play of blocks in a circle depends on where it is entered.
  const isCircular = hasCircle(names) || chapters.some(({ played }) => played.isCircular);
  const all = isCircular ? chapters.map(({ file, text }) => [file, text]) : [];
  return new Map(
    chapters.map(({ file, text, asked, settings, played, said }) => [
      file,
      hashOf(JSON.stringify([text, asked, settings, played.asked, said, all])),
    ]),
  );
}

function namesOf(
  chapters: readonly ChapterNow[],
  isMeant: (chapter: ChapterNow, at: number) => boolean,
): string[] {
  return chapters.filter(isMeant).map(({ file }) => file);
}
