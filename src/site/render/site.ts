import { createHash } from 'node:crypto';
import { toHtml } from 'hast-util-to-html';
import { describePosition, sideToMove } from '../../chess/index.ts';
import type { CourseNotes } from '../../contract/course-notes.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import { drawBoardInPage, pieceSprite } from '../../draw/index.ts';
import { palettes } from '../../draw/paint.ts';
import {
  type Chapter,
  type Course,
  chapterIndex,
  inCourseOrder,
  type Label,
} from '../../model/index.ts';
import {
  type Addresses,
  assignAddresses,
  cardPath,
  chapterDocument,
  chaptersMet,
  contextOf,
  emblematic,
  pageMedium,
  positionInWords,
  resolve,
} from '../../render/index.ts';
import { type Strings, stringsFor } from '../../strings/index.ts';
import type { ChapterPage, NamedPositions, SiteData, SiteFile } from '../site-data.ts';
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

/** What the pages show, and the files that stand beside them. */
export interface RenderedSite {
  readonly data: SiteData;
  /** The positions that other sites may show, whose pictures are still to be drawn. */
  readonly embeds: readonly Embed[];
  readonly files: readonly SiteFile[];
}

/** Renders all that the pages show. @throws SiteError for what cannot be published. */
export function renderSite(
  course: Course,
  place: Pick<SiteData, 'assets' | 'offline'> & {
    site?: string | undefined;
    base?: string | undefined;
    downloads?: SiteData['downloads'];
  },
): RenderedSite {
  const { settings } = course;
  const addresses = assignAddresses(course);
  const base: SiteContext = { ...contextOf(course), addresses };
  const site = place.site?.replace(/\/+$/, '');
  const feed = site !== undefined && course.news.length > 0 ? [makeFeed(base, site)] : [];
  const courseTable = makeCourseTable(course, addresses);
  const table = tableFile(courseTable);
  const advises = courseTable.positions.some(({ moves }) => moves[0]?.kind === 'advice');
  const notes = advises ? notesFile(makeCourseNotes(base, courseTable)) : undefined;
  const embeds = findEmbeds(course, addresses, base.strings);
  const data: SiteData = {
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
    table: table.path,
    ...(notes && { notes: notes.path }),
    card: cardPath(),
    icons: { tab: iconPath('icon.svg'), touch: iconPath(touchIcon.name) },
    sheet: { light: palettes.light.sheet, dark: palettes.dark.sheet },
    sprite: pieceSprite(),
    chapters: course.chapters.map((chapter) => chapterPage(base, chapter)),
    handout: renderHandout(base),
    positions: namedPositions(course, addresses),
    downloads: place.downloads ?? [],
    embeds: makeSnippets(course, embeds, site),
    embedScript: scriptSnippet(site),
    news: renderNews(base),
    ...(feed.length > 0 && { feed: feedPath }),
    transpositions: transpositions(courseTable, base.strings),
    patterns: patternEntries(base),
  };
  const boards = makeEmbedPages(course, embeds, { assets: place.assets, site });
  const beside = [...(notes ? [notes] : []), ...feed, ...boards];
  return { data, embeds, files: [table, ...beside, appManifest(course), tabIcon(course)] };
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

/** What practice needs beside the table, in the same way; named by its content. */
function notesFile(notes: CourseNotes): SiteFile {
  const json = JSON.stringify(notes);
  const edition = createHash('sha256').update(json).digest('hex').slice(0, 12);
  return {
    path: `course-notes.${edition}.js`,
    content: `globalThis.courseNotes=JSON.parse(${JSON.stringify(json)});\n`,
  };
}

function chapterPage(context: SiteContext, chapter: Chapter): ChapterPage {
  const { addresses, course, strings } = context;
  const board = readingBoard(chapter, strings);
  const page = pageMedium(addresses, chapter.file);
  const tree = resolve(chapterDocument({ ...context, chapter }), page, strings);
  const emblem = course.chapters.length <= mostEmblems ? emblemOf(chapter) : undefined;
  return {
    id: chapter.id,
    number: chapterIndex(course, chapter.file) + 1,
    title: chapter.title,
    ...(chapter.summary !== undefined && { summary: chapter.summary }),
    html: toHtml(tree, { allowDangerousHtml: true }),
    ...(board !== undefined && { board }),
    met: chaptersMet(course, chapter, addresses),
    ...(emblem !== undefined && { emblem }),
    card: cardPath(chapter),
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
