import { adviceOf } from '../../check/index.ts';
import { exercisesPage, freePlayLoader } from '../../contract/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import { type Chapter, type Course, courseId, practisedIn } from '../../model/index.ts';
import {
  assignAddresses,
  contextOf,
  emblematic,
  freshParts,
  newsPage,
  type Parts,
} from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import type { CourseContents } from '../course-pages.ts';
import { once } from '../once.ts';
import type {
  ChapterHead,
  PageData,
  PageName,
  SiteFile,
  SiteFrame,
  SitePlace,
} from '../site-data.ts';
import { appManifest } from '../web-app/app-manifest.ts';
import { iconPath, tabIcon } from '../web-app/icons.ts';
import { kindsPart } from './block-kinds.ts';
import { exerciseFiles, exercisePart } from './course-exercises.ts';
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
import { boardLists, boardsByChapter } from './embed/snippets.ts';
import { exerciseEntries } from './exercise-entries.ts';
import { feedPath, makeFeed } from './feed.ts';
import { keyPosition, workPart } from './first-page.ts';
import { documentsOnPaper, joinHandout } from './handout/handout.ts';
import { pageHeads } from './handout/page-heads.ts';
import { paperPart } from './handout/paper-part.ts';
import { hasTranspositions } from './has-transpositions.ts';
import { lookSheet } from './look-files.ts';
import { renderNews } from './news.ts';
import { pagesOfAuthor } from './own-pages.ts';
import { headOf, pagesOfChapters } from './pages-of-chapters.ts';
import { patternEntries } from './pattern-entries.ts';
import { positionsPage } from './positions-page.ts';
import {
  type FileGroup,
  page,
  type RenderedSite,
  type SiteMemory,
  type SitePage,
} from './rendered-site.ts';
import type { SiteContext } from './site-context.ts';
import { siteFrame } from './site-frame.ts';
import { type SitePrints, sitePrints } from './site-prints.ts';
import { type Meeting, transpositions } from './transpositions.ts';
import { downloadsIn, whatHelps } from './what-helps.ts';

/** Chapters whose boards the contents page can show; with more it would be too heavy. */
const mostEmblems = 40;

/**
 * All that a site shows, page by page.
 * @param given parts of chapters; default: made when asked for.
 * @param memory of earlier builds.
 * @throws SiteError for what cannot be published.
 */
export function renderSite(
  course: Course,
  place: SitePlace,
  given?: Parts,
  memory?: SiteMemory,
): RenderedSite {
  const { chapters } = course;
  const addresses = assignAddresses(course);
  const base: SiteContext = { ...contextOf(course), addresses };
  const { strings } = base;
  const parts = given ?? freshParts(base);
  const courseTable = once(() => makeCourseTable(course, addresses, parts));
  const table = once(() => tableScript(courseTable()));
  const notes = once(() => notesScript(makeCourseNotes(base, courseTable(), parts)));
  const exercises = once(() => exerciseFiles(course, has.advice, { addresses, parts, strings }));
  const freePlay = () => {
    const own = { course: courseId(course), words: strings.free };
    return freePlayScript(has.advice ? { ...own, notes: notes().path } : own, place.assets);
  };
  const meetings = once(() => transpositions(courseTable(), strings));
  const embeds = once(() => findEmbeds(course, addresses, strings));
  const recall = memory?.recall ?? ((_name, make) => make());
  const has = recall('contents', () => contentsOf(course, meetings, parts));
  const frame = siteFrame(course, place, has);
  const prints = sitePrints({ memory, frame, place, chapters });
  const heads = chapters.map((chapter, index) => headOf(chapter, index + 1));
  const inCourse = { chapters: heads };
  const take = downloadsIn(place);
  const headsOnPaper = once(() => pageHeads(frame, [...heads, ...pagesOnPaper(course)], strings));
  const made: Makings = {
    ...{ base, place, parts, prints, has, frame, recall, take, inCourse },
    ...{ table, notes, exercises, freePlay, meetings, embeds, headsOnPaper },
  };
  const shown = pagesOfChapters(chapters, { heads, parts, prints, movesOf: take.of });
  const own = pagesOfAuthor(course.pages, { parts, prints });
  const documents = [...shown, ...own];
  const pages = pagesOf(
    made,
    documents.map(({ sitePage }) => sitePage),
  );
  const files = filesOf(made);
  const printed = prints && {
    pages: pages.map((each) => ({ print: prints.whole, ...each })),
    files: files.map((each) => ({ print: prints.whole, ...each })),
    print: prints.whole(),
  };
  return { frame, pages, embeds, files, documentPages: documents, ...printed };
}

/** What pages and files are made of, each made when first asked for. */
interface Makings {
  readonly base: SiteContext;
  readonly place: SitePlace;
  readonly parts: Parts;
  readonly prints: SitePrints | undefined;
  readonly has: CourseContents;
  readonly frame: SiteFrame;
  readonly recall: SiteMemory['recall'];
  readonly take: ReturnType<typeof downloadsIn>;
  readonly inCourse: { readonly chapters: readonly ChapterHead[] };
  readonly table: () => SiteFile;
  readonly notes: () => SiteFile;
  readonly exercises: () => readonly SiteFile[];
  readonly freePlay: () => SiteFile;
  readonly meetings: () => readonly Meeting[];
  readonly embeds: () => readonly Embed[];
  readonly headsOnPaper: () => SiteFile;
}

function pagesOf(made: Makings, ofDocuments: readonly SitePage[]): SitePage[] {
  const { base, frame, parts, prints, has, recall, take, inCourse } = made;
  const { table, notes, exercises, meetings, embeds, headsOnPaper } = made;
  const { course, strings } = base;
  return [
    page(
      'contents',
      'index.html',
      () => ({
        ...inCourse,
        ...recall('first page', () => firstPage(base)),
        work: course.chapters.map((chapter) => parts.of(workPart, chapter)),
        downloads: take.whole,
      }),
      prints?.withAll(workPart),
    ),
    ...ofDocuments,
    ...onlyIf(
      has.advice,
      'practice',
      'practice.html',
      () => ({
        ...inCourse,
        table: table().path,
        notes: notes().path,
        exercises: exercises()[0]?.path,
      }),
      prints?.withAll(exercisePart),
    ),
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
      ...whatHelps(strings, inCourse.chapters, take),
    })),
    ...onlyIf(has.exercises, 'exercises', exercisesPage, () => ({
      ...inCourse,
      exercises: exerciseEntries(course, parts),
    })),
    ...onlyIf(has.patterns, 'patterns', 'patterns.html', () => ({
      ...inCourse,
      patterns: patternEntries(base),
    })),
    ...onlyIf(has.news, 'changes', newsPage, () => ({ ...inCourse, news: renderNews(base) })),
    page(
      'print',
      'print.html',
      () => ({
        ...inCourse,
        ...onPaper(course, parts, headsOnPaper()),
      }),
      prints?.withAll(paperPart, course.pages),
    ),
    ...boardLists(
      course,
      frame.site,
      recall('boards', () => boardsByChapter(course)),
    ).map(({ path, data }) => page('boards', path, () => ({ ...inCourse, ...data(embeds()) }))),
    page('missing', '404.html', () => inCourse),
  ];
}

function filesOf(made: Makings): FileGroup[] {
  const { base, place, prints, has, frame } = made;
  const { table, notes, exercises, freePlay, embeds, headsOnPaper } = made;
  const { course } = base;
  const { site } = frame;
  return [
    { beginning: 'course-table.', make: () => [table(), tableLoaderScript(table())] },
    { beginning: 'course-notes.', make: () => (has.advice ? [notes()] : []) },
    { beginning: 'course-exercises.', make: exercises, print: prints?.withAll(exercisePart) },
    { beginning: freePlayLoader, make: () => [freePlay()] },
    { beginning: feedPath, make: () => (frame.feed && site ? [makeFeed(base, site)] : []) },
    {
      beginning: 'boards/',
      make: () => [
        ...makeEmbedPages(course, embeds(), {
          assets: place.assets,
          site,
          themeSheet: frame.themeSheet,
        }),
        ...(site === undefined ? [] : oEmbedFiles(course, embeds(), site)),
      ],
    },
    { beginning: frame.readerWords, make: () => [readerWordsScript(stringsFor(frame.language))] },
    { beginning: 'page-heads.', make: () => [headsOnPaper()] },
    { beginning: 'course.webmanifest', make: () => [appManifest(course)] },
    { beginning: 'theme.', make: () => [lookSheet(course) ?? []].flat() },
    { beginning: iconPath('icon.svg'), make: () => [tabIcon(course, place.icon)] },
  ];
}

function firstPage(
  base: SiteContext,
): Omit<PageData['contents'], 'chapters' | 'downloads' | 'work'> {
  const { course } = base;
  const { chapters } = course;
  return {
    emblems: chapters.length <= mostEmblems ? chapters.map(emblemOf) : [],
    key: keyPosition(base),
    moves: practisedIn(course).asked.size,
  };
}

function contentsOf(
  course: Course,
  meetings: Parameters<typeof hasTranspositions>[1],
  parts: Parts,
): CourseContents {
  const { chapters, labels, news } = course;
  const kinds = new Set(chapters.flatMap((chapter) => parts.of(kindsPart, chapter)));
  return {
    advice: adviceOf(course).size > 0,
    positions: Object.keys(labels).length > 0 || hasTranspositions(course, meetings),
    patterns: kinds.has('pattern'),
    exercises: kinds.has('exercise'),
    news: news.length > 0,
  };
}

function pagesOnPaper(course: Course) {
  return documentsOnPaper(course).flatMap(({ document: { title, page }, number }) =>
    page ? [{ number, title, isPage: true as const }] : [],
  );
}

function onPaper(
  course: Course,
  parts: Parts,
  { path }: SiteFile,
): Omit<PageData['print'], 'chapters'> {
  const [first] = course.chapters;
  return { handout: joinHandout(course, parts), board: first && emblemOf(first), heads: path };
}

/** A page that not every course has. */
function onlyIf<Name extends PageName>(
  isThere: boolean,
  ...[name, path, data, print]: Parameters<typeof page<Name>>
): SitePage<Name>[] {
  return isThere ? [page(name, path, data, print)] : [];
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
