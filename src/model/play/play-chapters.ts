import type { Place } from '../../diagnostics/index.ts';
import type { ChapterSyntax, Side } from '../../read/index.ts';
import { firstSign } from '../first-sign.ts';
import type { ModelLimits } from '../model-limits.ts';
import type { Chapter, GivenName } from '../types.ts';
import { collectNames } from './collect-names.ts';
import { finishBlock, moveTo } from './finish-block.ts';
import { castledTo, nameOf, playBlock } from './play-block.ts';
import { reportIn } from './report.ts';
import { resolveTexts } from './resolve-texts.ts';
import {
  type ChapterInWork,
  type CourseInWork,
  makeChapterInWork,
  type NameSite,
  positionOf,
  type SaidElsewhere,
  type ShownNode,
} from './work.ts';

/** A chapter to play, or one that was played before. */
export type ChapterToPlay = ChapterSyntax | Pick<PlayedChapter, 'file' | 'names'>;

/** A played chapter, as far as it can be known without chapters that it does not ask for. */
export interface PlayedChapter {
  readonly file: string;
  /** Without exits of games and matches of patterns, which need the whole course. */
  readonly chapter: Chapter;
  readonly names: readonly GivenName[];
  /** What it says of positions of other chapters. */
  readonly elsewhere: readonly SaidElsewhere[];
  /** The names that its result depends on, sorted. */
  readonly asked: readonly string[];
  /** Whether a block depends on itself: the result then depends on where one begins. */
  readonly isCircular: boolean;
}

/**
 * Plays chapters: every block, and finds the position that each name, mark and statement speaks of. Nothing
 * is judged: what cannot be played or read is kept and marked.
 *
 * Names may be used before and across chapters, so a block is played when it is first needed:
 * `from="x"` plays the block in which `x` is named, and so on.
 * @param course all chapters and pages in their order; those that have been played before give their names.
 */
export function playChapters(
  course: readonly ChapterToPlay[],
  { side, limits }: { readonly side: Side; readonly limits: ModelLimits },
): PlayedChapter[] {
  const chapters = new Map<string, ChapterInWork>();
  const names = new Map<string, NameSite>();
  const given = new Map<ChapterInWork, readonly NameSite[]>();
  for (const [order, chapter] of course.entries()) {
    let sites: readonly NameSite[];
    if ('body' in chapter) {
      const work = makeChapterInWork(chapter, order, limits.places);
      chapters.set(chapter.file, work);
      sites = collectNames(work);
      given.set(work, sites);
    } else sites = chapter.names.map((name) => ({ ...name, given: name }));
    for (const site of sites) if (!names.has(site.name)) names.set(site.name, site);
  }
  const work: CourseInWork = { chapters, names, limits, found: new Map(), open: [], depth: 0 };
  for (const chapter of chapters.values()) {
    for (const block of chapter.blocks) playBlock(block, work);
    resolveTexts(chapter, work);
  }
  const view = side === 'both' ? 'white' : side;
  return [...chapters.values()].map((chapter) =>
    finishChapter(chapter, given.get(chapter) ?? [], view, work),
  );
}

function finishChapter(
  chapter: ChapterInWork,
  sites: readonly NameSite[],
  view: 'white' | 'black',
  course: CourseInWork,
): PlayedChapter {
  const { syntax } = chapter;
  const around = {
    view,
    report: reportIn(chapter),
    keyOfName: (name: string) => {
      chapter.asked.add(name);
      return positionOf(course.found.get(name) ?? placeOfKept(name, course))?.key;
    },
  };
  const blocks = chapter.blocks.map((block) => finishBlock(block, around));
  const names = sites.map((site) => {
    const isFirst = course.names.get(site.name) === site;
    chapter.asked.add(site.name);
    return nameFacts(site, isFirst ? course.found.get(site.name) : undefined);
  });
  return {
    file: syntax.file,
    names,
    elsewhere: chapter.elsewhere,
    asked: [...chapter.asked].sort(),
    isCircular: chapter.isCircular,
    chapter: {
      id: syntax.id,
      title: syntax.title,
      ...(syntax.summary === undefined ? {} : { summary: syntax.summary }),
      ...(syntax.learn === undefined ? {} : { learn: syntax.learn }),
      ...(syntax.draft && { draft: true }),
      ...(syntax.page && { page: syntax.page }),
      ...(syntax.language !== undefined && { language: syntax.language }),
      ...(syntax.pieces && { pieces: syntax.pieces }),
      file: syntax.file,
      frontTexts: syntax.frontTexts,
      body: syntax.body,
      media: syntax.media,
      blocks,
      spoken: chapter.spoken,
      names,
      problems: chapter.problems,
    },
  };
}

function placeOfKept(name: string, { names }: CourseInWork): ShownNode | undefined {
  const site = names.get(name);
  if (!site || !('given' in site) || !site.given.ref) return undefined;
  return { ref: site.given.ref, given: site.given };
}

function nameFacts(site: NameSite, shown: ShownNode | undefined): GivenName {
  const { name, place } = site;
  const { title } = 'given' in site ? site.given : site.directive;
  const given = { name, ...(title !== undefined && { title }), place };
  if (!shown) return { ...given, castled: [] };
  const position = positionOf(shown);
  const move = moveTo(shown);
  const from = shown.by ?? ('given' in shown ? shown.given.name : nameOf(shown.block)?.text);
  return {
    ...given,
    ref: shown.ref,
    shown: placeOfShown(shown),
    castled: castledTo(shown),
    ...(position ? { position } : {}),
    ...(move ? { move: { from: move.from, to: move.to } } : {}),
    ...(from === undefined ? {} : { from }),
  };
}

function placeOfShown(shown: ShownNode): Place {
  if ('given' in shown) return shown.given.shown ?? shown.given.place;
  const { node, block } = shown;
  return node.written?.place ?? firstSign(block.syntax.place);
}
