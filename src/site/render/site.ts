import { adviceOf } from '../../check/index.ts';
import { exercisesPage, freePlayLoader } from '../../contract/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import { type Chapter, type Course, courseId, practisedIn } from '../../model/index.ts';
import {
  assignAddresses,
  cardPath,
  contextOf,
  emblematic,
  freshParts,
  newsPage,
  type Parts,
} from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import type { CourseContents } from '../course-pages.ts';
import { once } from '../once.ts';
import type { ChapterHead, PageData, PageName, SiteFile, SiteFrame } from '../site-data.ts';
import { appManifest } from '../web-app/app-manifest.ts';
import { iconPath, tabIcon } from '../web-app/icons.ts';
import { pagePart } from './chapter-page.ts';
import { exerciseFiles } from './course-exercises.ts';
import { makeCourseNotes } from './course-notes.ts';
import { makeCourseTable } from './course-table.ts';
import {
  freePlayScript,
  notesScript,
  readerWordsScript,
  tableLoaderScript,
  tableScript,
} from './data-scripts.ts';
import { makeEmbedPages } from './embed/embed-pages.ts';
import { type Embed, findEmbeds } from './embed/embeds.ts';
import { oEmbedFiles } from './embed/oembed.ts';
import { boardLists } from './embed/snippets.ts';
import { exerciseEntries } from './exercise-entries.ts';
import { feedPath, makeFeed } from './feed.ts';
import { keyPosition, workIn } from './first-page.ts';
import { joinHandout } from './handout/handout.ts';
import { pageHeads } from './handout/page-heads.ts';
import { hasTranspositions } from './has-transpositions.ts';
import { renderNews } from './news.ts';
import { patternEntries } from './pattern-entries.ts';
import { positionsPage } from './positions-page.ts';
import { signsLegend } from './signs/signs-legend.ts';
import type { SiteContext } from './site-context.ts';
import { type SitePlace, siteFrame } from './site-frame.ts';
import { transpositions } from './transpositions.ts';

/** With more chapters the contents page shows no boards: it would grow too heavy. */
const mostEmblems = 40;

/** A page of a course, and how it comes to what it shows. */
export interface SitePage<Name extends PageName = PageName> {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly name: Name;
  /** Renders what the page shows. */
  readonly data: () => PageData[Name];
}

/** Files that are made together, when one of them is asked for. */
export interface FileGroup {
  /** What the paths of all of them, and of no file of another group, begin with. */
  readonly beginning: string;
  readonly make: () => readonly SiteFile[];
}

/** What a site is made of. Nothing of it is rendered before it is asked for. */
export interface RenderedSite {
  readonly frame: SiteFrame;
  readonly pages: readonly SitePage[];
  /** The positions that other sites may show, whose pictures are still to be drawn. */
  readonly embeds: () => readonly Embed[];
  readonly files: readonly FileGroup[];
}

/**
 * All that a site shows, page by page.
 * @param given what is made of single chapters; made when it is asked for unless given.
 * @throws SiteError for what cannot be published.
 */
export function renderSite(course: Course, place: SitePlace, given?: Parts): RenderedSite {
  const { chapters } = course;
  const addresses = assignAddresses(course);
  const base: SiteContext = { ...contextOf(course), addresses };
  const { strings } = base;
  const parts = given ?? freshParts(base);
  const courseTable = once(() => makeCourseTable(course, addresses));
  const table = once(() => tableScript(courseTable()));
  const notes = once(() => notesScript(makeCourseNotes(base, courseTable())));
  const exercises = once(() => exerciseFiles(course, { addresses, parts, strings }));
  const freePlay = () => {
    const own = { course: courseId(course), words: strings.free };
    return freePlayScript(has.advice ? { ...own, notes: notes().path } : own, place.assets);
  };
  const meetings = once(() => transpositions(courseTable(), strings));
  const embeds = once(() => findEmbeds(course, addresses, strings));
  const has = contentsOf(course, meetings);
  const frame = siteFrame(course, place, has);
  const { site } = frame;
  const heads = chapters.map((chapter, index) => headOf(chapter, index + 1));
  const inCourse = { chapters: heads };
  const take = downloadsIn(place);
  const headsOnPaper = once(() => pageHeads(frame, heads, strings));
  const pages: SitePage[] = [
    page('contents', 'index.html', () => ({ ...inCourse, ...firstPage(base, place) })),
    ...chapters.map((chapter, index) =>
      page('chapter', `${chapter.id}.html`, () => ({
        chapter: {
          ...(heads[index] ?? headOf(chapter, index + 1)),
          ...parts.of(pagePart, chapter),
        },
        moves: take.of(chapter.id),
        previous: heads[index - 1],
        next: heads[index + 1],
      })),
    ),
    ...onlyIf(has.advice, 'practice', 'practice.html', () => ({
      ...inCourse,
      table: table().path,
      notes: notes().path,
      exercises: exercises()[0]?.path,
    })),
    ...(['compare', 'notes', 'search', 'tree'] as const).map((name) =>
      page(name, `${name}.html`, () => ({ ...inCourse, table: table().path })),
    ),
    // Also where no head leads to it: an old link may.
    page('positions', 'positions.html', () => ({
      ...inCourse,
      ...positionsPage(base, meetings()),
    })),
    page('signs', 'signs.html', () => ({
      ...inCourse,
      ...whatHelps(strings, heads, take),
    })),
    ...onlyIf(has.exercises, 'exercises', exercisesPage, () => ({
      ...inCourse,
      exercises: exerciseEntries(course, addresses, strings),
    })),
    ...onlyIf(has.patterns, 'patterns', 'patterns.html', () => ({
      ...inCourse,
      patterns: patternEntries(base),
    })),
    ...onlyIf(has.news, 'changes', newsPage, () => ({ ...inCourse, news: renderNews(base) })),
    page('print', 'print.html', () => ({
      ...inCourse,
      ...onPaper(course, parts, headsOnPaper()),
    })),
    ...boardLists(course, site).map(({ path, data }) =>
      page('boards', path, () => ({ ...inCourse, ...data(embeds()) })),
    ),
    page('missing', '404.html', () => inCourse),
  ];
  const files: FileGroup[] = [
    { beginning: 'course-table.', make: () => [table(), tableLoaderScript(table())] },
    { beginning: 'course-notes.', make: () => (has.advice ? [notes()] : []) },
    { beginning: 'course-exercises.', make: exercises },
    { beginning: freePlayLoader, make: () => [freePlay()] },
    { beginning: feedPath, make: () => (frame.feed && site ? [makeFeed(base, site)] : []) },
    {
      beginning: 'boards/',
      make: () => [
        ...makeEmbedPages(course, embeds(), { assets: place.assets, site }),
        ...(site === undefined ? [] : oEmbedFiles(course, embeds(), site)),
      ],
    },
    { beginning: frame.readerWords, make: () => [readerWordsScript(stringsFor(frame.language))] },
    { beginning: 'page-heads.', make: () => [headsOnPaper()] },
    { beginning: 'course.webmanifest', make: () => [appManifest(course)] },
    { beginning: iconPath('icon.svg'), make: () => [tabIcon(course)] },
  ];
  return { frame, pages, embeds, files };
}

function firstPage(base: SiteContext, place: SitePlace): Omit<PageData['contents'], 'chapters'> {
  const { course } = base;
  const { chapters } = course;
  return {
    emblems: chapters.length <= mostEmblems ? chapters.map(emblemOf) : [],
    downloads: downloadsIn(place).whole,
    key: keyPosition(base),
    work: workIn(course),
    moves: practisedIn(course).asked.size,
  };
}

function contentsOf(
  course: Course,
  meetings: Parameters<typeof hasTranspositions>[1],
): CourseContents {
  const { chapters, labels, news } = course;
  const blocks = chapters.flatMap((chapter) => chapter.blocks);
  return {
    advice: adviceOf(course).size > 0,
    positions: Object.keys(labels).length > 0 || hasTranspositions(course, meetings),
    patterns: blocks.some(({ kind }) => kind === 'pattern'),
    exercises: blocks.some(({ kind }) => kind === 'exercise'),
    news: news.length > 0,
  };
}

function onPaper(
  course: Course,
  parts: Parts,
  { path }: SiteFile,
): Omit<PageData['print'], 'chapters'> {
  const [first] = course.chapters;
  return { handout: joinHandout(course, parts), board: first && emblemOf(first), heads: path };
}

/** What the page of signs has beside the words of the catalogue. */
function whatHelps(
  strings: Strings,
  heads: readonly ChapterHead[],
  { whole, of }: ReturnType<typeof downloadsIn>,
): Omit<PageData['signs'], 'chapters'> {
  const moves = heads.flatMap(({ id, title }) => {
    const path = of(id);
    return path === undefined ? [] : [{ title, path }];
  });
  return { legend: signsLegend(strings), downloads: whole, moves };
}

/** What the contents and the chapters offer to take along. */
function downloadsIn({ downloads = [] }: SitePlace) {
  return {
    whole: downloads.filter(({ chapter }) => chapter === undefined),
    of: (id: string) => downloads.find(({ chapter }) => chapter === id)?.path,
  };
}

function page<Name extends PageName>(
  name: Name,
  path: string,
  data: () => PageData[Name],
): SitePage<Name> {
  return { path, name, data };
}

/** A page that not every course has. */
function onlyIf<Name extends PageName>(
  isThere: boolean,
  ...[name, path, data]: Parameters<typeof page<Name>>
): SitePage<Name>[] {
  return isThere ? [page(name, path, data)] : [];
}

function headOf(chapter: Chapter, number: number): ChapterHead {
  const { id, title, summary, draft } = chapter;
  return {
    id,
    number,
    title,
    ...(summary !== undefined && { summary }),
    ...(draft && { draft }),
    card: cardPath(chapter),
  };
}

function emblemOf(chapter: Chapter): string | undefined {
  const shown = emblematic(chapter);
  if (shown === undefined) return undefined;
  return drawBoardInPage({
    placement: shown.position.fen,
    view: shown.block.view,
    coordinates: false,
  });
}
