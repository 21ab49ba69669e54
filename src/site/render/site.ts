import { createHash } from 'node:crypto';
import { toHtml } from 'hast-util-to-html';
import { adviceOf } from '../../check/index.ts';
import { describePosition, sideToMove } from '../../chess/index.ts';
import {
  type CourseNotes,
  type CourseTable,
  tableLoaded,
  tableLoader,
} from '../../contract/index.ts';
import { drawBoardInPage, palettes, pieceSprite } from '../../draw/index.ts';
import { type Chapter, type Course, inCourseOrder, type Label } from '../../model/index.ts';
import {
  type Addresses,
  assignAddresses,
  cardPath,
  chapterDocument,
  chaptersMet,
  contextOf,
  emblematic,
  newsPage,
  nodeAt,
  pageMedium,
  positionInWords,
  resolve,
} from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import { type CourseContents, coursePages } from '../course-pages.ts';
import { once } from '../once.ts';
import type {
  AssetPaths,
  ChapterHead,
  ChapterPage,
  Download,
  NamedPositions,
  PageData,
  PageName,
  SiteFile,
  SiteFrame,
} from '../site-data.ts';
import { appManifest } from '../web-app/app-manifest.ts';
import { iconPath, tabIcon, touchIcon } from '../web-app/icons.ts';
import { makeCourseNotes } from './course-notes.ts';
import { makeCourseTable } from './course-table.ts';
import { makeEmbedPages, makeSnippets, scriptSnippet } from './embed-pages.ts';
import { type Embed, findEmbeds } from './embeds.ts';
import { feedPath, makeFeed } from './feed.ts';
import { renderHandout } from './handout/handout.ts';
import { renderNews } from './news.ts';
import { patternEntries } from './pattern-entries.ts';
import type { SiteContext } from './site-context.ts';
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

/** Where a site will stand, and what stands in it beside its pages. */
export interface SitePlace {
  readonly assets: AssetPaths;
  readonly offline: boolean;
  readonly site?: string | undefined;
  readonly base?: string | undefined;
  readonly downloads?: readonly Download[];
}

/** All that a site shows, page by page. @throws SiteError for what cannot be published. */
export function renderSite(course: Course, place: SitePlace): RenderedSite {
  const { settings, chapters, news } = course;
  const addresses = assignAddresses(course);
  const base: SiteContext = { ...contextOf(course), addresses };
  const { strings } = base;
  const site = place.site?.replace(/\/+$/, '');
  const courseTable = once(() => makeCourseTable(course, addresses));
  const table = once(() => tableFile(courseTable()));
  const notes = once(() => notesFile(makeCourseNotes(base, courseTable())));
  const meetings = once(() => transpositions(courseTable(), strings));
  const embeds = once(() => findEmbeds(course, addresses, strings));
  const named = Object.values(course.labels);
  const has: CourseContents = {
    advice: adviceOf(course).size > 0,
    positions: named.length > 0 || waysMeet(course, meetings),
    patterns: chapters.some(({ blocks }) => blocks.some(({ kind }) => kind === 'pattern')),
    news: news.length > 0,
  };
  const frame: SiteFrame = {
    language: settings.language,
    title: settings.title,
    side: settings.side,
    notation: settings.notation,
    ...(settings.author !== undefined && { author: settings.author }),
    ...(settings.summary !== undefined && { summary: settings.summary }),
    ...(settings.licence !== undefined && { licence: settings.licence }),
    ...(site !== undefined && { site }),
    ...(place.base !== undefined && { base: place.base }),
    offline: place.offline,
    assets: place.assets,
    card: cardPath(),
    icons: { tab: iconPath('icon.svg'), touch: iconPath(touchIcon.name) },
    sheet: { light: palettes.light.sheet, dark: palettes.dark.sheet },
    sprite: pieceSprite(),
    pages: coursePages(has, strings),
    ...(site !== undefined && has.news && { feed: feedPath }),
  };
  const heads = chapters.map((chapter, index) => headOf(chapter, index + 1));
  const inCourse = { chapters: heads };
  const pages: SitePage[] = [
    page('contents', 'index.html', () => ({
      ...inCourse,
      emblems: chapters.length <= mostEmblems ? chapters.map(emblemOf) : [],
      downloads: place.downloads ?? [],
    })),
    ...chapters.map((chapter, index) =>
      page('chapter', `${chapter.id}.html`, () => ({
        chapter: chapterPage(base, chapter, heads[index] ?? headOf(chapter, index + 1)),
        previous: heads[index - 1],
        next: heads[index + 1],
      })),
    ),
    ...onlyIf(has.advice, 'practice', 'practice.html', () => ({
      ...inCourse,
      table: table().path,
      notes: notes().path,
    })),
    ...(['compare', 'search', 'tree'] as const).map((name) =>
      page(name, `${name}.html`, () => ({ ...inCourse, table: table().path })),
    ),
    // Also where no head leads to it: an old link may.
    page('positions', 'positions.html', () => ({
      ...inCourse,
      positions: namedPositions(course, addresses),
      transpositions: meetings(),
    })),
    ...onlyIf(has.patterns, 'patterns', 'patterns.html', () => ({
      ...inCourse,
      patterns: patternEntries(base),
    })),
    ...onlyIf(has.news, 'changes', newsPage, () => ({ ...inCourse, news: renderNews(base) })),
    page('print', 'print.html', () => ({ ...inCourse, handout: renderHandout(base) })),
    ...onlyIf(
      named.some(({ ref }) => nodeAt(course, ref)?.position),
      'boards',
      'boards/list.html',
      () => ({
        ...inCourse,
        embeds: makeSnippets(course, embeds(), site),
        embedScript: scriptSnippet(site),
      }),
    ),
    page('missing', '404.html', () => inCourse),
  ];
  const files: FileGroup[] = [
    { beginning: 'course-table.', make: () => [table(), tableLoaderFile(table())] },
    { beginning: 'course-notes.', make: () => (has.advice ? [notes()] : []) },
    { beginning: feedPath, make: () => (frame.feed && site ? [makeFeed(base, site)] : []) },
    {
      beginning: 'boards/',
      make: () => makeEmbedPages(course, embeds(), { assets: place.assets, site }),
    },
    { beginning: 'course.webmanifest', make: () => [appManifest(course)] },
    { beginning: iconPath('icon.svg'), make: () => [tabIcon(course)] },
  ];
  return { frame, pages, embeds, files };
}

function page<Name extends PageName>(
  name: Name,
  path: string,
  data: () => PageData[Name],
): SitePage<Name> {
  return { path, name, data };
}

/** Whether the course has transpositions; whether `all` is empty, but for most courses much sooner. */
function waysMeet({ graph }: Course, all: () => readonly unknown[]): boolean {
  const from = new Map<string, string>();
  let perhaps = false;
  for (const { key, moves } of Object.values(graph)) {
    for (const { to } of moves) {
      const other = from.get(to) ?? key;
      from.set(to, other);
      if (other === key) continue;
      // What the course begins with, or a block, may hang on nothing.
      if (graph[to]?.at[0]?.node !== 0) return true;
      perhaps = true;
    }
  }
  return perhaps && all().length > 0;
}

/** A page that not every course has. */
function onlyIf<Name extends PageName>(
  isThere: boolean,
  ...[name, path, data]: Parameters<typeof page<Name>>
): SitePage<Name>[] {
  return isThere ? [page(name, path, data)] : [];
}

/**
 * The table as a script, since a page that was opened from a folder (file://) may load scripts but
 * not fetch, and so may a worker. Parsed as JSON: that is faster than as a literal.
 */
function tableFile(table: CourseTable): SiteFile {
  const text = JSON.stringify(JSON.stringify(table));
  return {
    path: `course-table.${table.edition}.js`,
    content: `globalThis.courseTable=JSON.parse(${text});\n`,
  };
}

/** Brings the table to a page that does not name it. */
function tableLoaderFile({ path }: SiteFile): SiteFile {
  const content =
    `const table=document.createElement('script');` +
    `table.src=new URL('${path}',document.currentScript.src);` +
    `table.onload=()=>dispatchEvent(new Event('${tableLoaded}'));document.head.append(table);`;
  return { path: tableLoader, content: `{${content}}\n` };
}

/** What practice needs beside the table, in the same way; named by its content. */
function notesFile(notes: CourseNotes): SiteFile {
  const json = JSON.stringify(notes);
  const edition = createHash('sha256').update(json).digest('hex').slice(0, 12);
  return {
    path: `course-notes.${edition}.js`,
    content: `globalThis.courseNotes=JSON.parse(${JSON.stringify(json)});\n`,
  };
}

function headOf(chapter: Chapter, number: number): ChapterHead {
  const { id, title, summary } = chapter;
  return {
    id,
    number,
    title,
    ...(summary !== undefined && { summary }),
    card: cardPath(chapter),
  };
}

function chapterPage(context: SiteContext, chapter: Chapter, head: ChapterHead): ChapterPage {
  const { addresses, course, strings } = context;
  const board = readingBoard(chapter, strings);
  const page = pageMedium(addresses, chapter.file);
  const tree = resolve(chapterDocument({ ...context, chapter }), page, strings);
  return {
    ...head,
    html: toHtml(tree, { allowDangerousHtml: true }),
    ...(board !== undefined && { board }),
    met: chaptersMet(course, chapter, addresses),
  };
}

/** The board beside the text as it stands before anything is read. */
function readingBoard({ blocks }: Chapter, strings: Strings): string | undefined {
  const first = blocks.find((block) => block.kind === 'moves' || block.kind === 'game');
  const start = first?.nodes[0]?.position;
  if (first === undefined || start === undefined) return undefined;
  return drawBoardInPage({
    placement: start.fen,
    view: first.view,
    turn: sideToMove(start),
    desc: describePosition(start, strings.position),
  });
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

function namedPositions(course: Course, addresses: Addresses): NamedPositions[] {
  const strings = stringsFor(course.settings.language);
  const labels = new Map<string, Label[]>();
  for (const label of Object.values(course.labels)) {
    const there = labels.get(label.ref.chapter);
    if (there) there.push(label);
    else labels.set(label.ref.chapter, [label]);
  }
  const inOrder = inCourseOrder(course);
  return course.chapters.flatMap((chapter) => {
    const entries = (labels.get(chapter.file) ?? [])
      .sort((a, b) => inOrder(a.ref, b.ref))
      .map(({ name, ref }) => ({
        name,
        href: addresses.href(ref),
        words: positionInWords(course, ref, strings, chapter.file),
      }));
    if (entries.length === 0) return [];
    return [{ chapter: chapter.title, page: addresses.page(chapter.file), entries }];
  });
}
