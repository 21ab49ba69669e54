import { describePosition } from '../../chess/index.ts';
import type { BuiltCourse, ShelfNews } from '../../contract/index.ts';
import { drawBoardInPage } from '../../draw/index.ts';
import { colourIn } from '../../look/index.ts';
import { type Course, courseId, practisedIn } from '../../model/index.ts';
import {
  askOf,
  assignAddresses,
  contextOf,
  coverPosition,
  freshParts,
  newsId,
  newsPage,
  type Parts,
  positionInWords,
} from '../../render/index.ts';
import { ownName } from '../languages.ts';
import { feedEntries } from '../render/feed.ts';
import { workPart } from '../render/first-page.ts';
import type { SiteMemory } from '../render/rendered-site.ts';
import type { SiteContext } from '../render/site-context.ts';
import { clothOf } from './cloth-sheet.ts';

/** What tells of a course that was built for a shelf. */
export interface BuiltFor {
  /** Name of its folder in the shelf. */
  readonly id: string;
  /** The files of its site, relative to its folder: `SiteSummary.files`. */
  readonly files: readonly string[];
  /** Address of the course's own site, where the shelf has one. */
  readonly site?: string | undefined;
  /** Tags of the other languages that its site has. */
  readonly languages?: readonly string[] | undefined;
  /** As the build of its site was given them. */
  readonly parts?: Parts | undefined;
  readonly memory?: SiteMemory | undefined;
}

/** What the pages of a shelf must know of a course; plain data, so that the course itself can be let go. */
export function describeBuilt(course: Course, built: BuiltFor): BuiltCourse {
  const { settings, chapters } = course;
  const context: SiteContext = { ...contextOf(course), addresses: assignAddresses(course) };
  const parts = built.parts ?? freshParts(context);
  const recall = built.memory?.recall ?? ((_name, make) => make());
  const work = chapters.map((chapter) => parts.of(workPart, chapter));
  return {
    id: built.id,
    course: courseId(course),
    title: settings.title,
    language: settings.language,
    side: settings.side,
    author: settings.author,
    summary: settings.summary,
    chapters: chapters.length,
    minutes: work.reduce((sum, { minutes }) => sum + minutes, 0),
    ...recall('on a shelf', () => ({
      moves: practisedIn(course).asked.size,
      cover: coverOf(context),
    })),
    ...(built.languages &&
      built.languages.length > 0 && {
        languages: built.languages.map((tag) => ({ tag, name: ownName(tag) })),
      }),
    cloth: clothOf((name, mode) => colourIn(course.theme?.look, name, mode)),
    news: newsOf(context, built.site?.replace(/\/+$/, '')),
    files: built.files,
  };
}

function coverOf({ course, strings }: SiteContext): BuiltCourse['cover'] {
  const cover = coverPosition(course);
  if (cover === undefined) return undefined;
  const { position, view, lastMove, ref } = cover;
  return {
    board: drawBoardInPage({
      placement: position.fen,
      view,
      lastMove,
      coordinates: false,
      desc: describePosition(position, strings.position),
    }),
    words: course.graph[position.key] && positionInWords(askOf(course), ref, strings, ref.chapter),
  };
}

function newsOf(context: SiteContext, site: string | undefined): ShelfNews[] {
  const entries = site === undefined ? [] : feedEntries(context, site);
  return context.course.news.map((news, index) => ({
    title: news.title,
    date: news.date,
    href: `${newsPage}#${encodeURIComponent(newsId(news))}`,
    id: entries[index]?.id,
    html: entries[index]?.html,
  }));
}
