import type { CourseFrame } from '../read/index.ts';
import { findUnsought } from './find-unsought.ts';
import { firstNames } from './first-names.ts';
import { followGame } from './follow-game.ts';
import { joinFrame } from './join-frame.ts';
import { makeGraph } from './make-graph.ts';
import { findPattern } from './match-pattern.ts';
import { mergeSaid } from './merge-said.ts';
import type { ModelLimits } from './model-limits.ts';
import type { PlayedChapter } from './play/play-chapters.ts';
import type { SaidElsewhere } from './play/work.ts';
import type { Block, Chapter, Course, Label } from './types.ts';

/** Joins chapters that have been played to a course: its names, its graph of positions, its games' exits. */
export function assembleCourse(
  frame: CourseFrame,
  played: readonly PlayedChapter[],
  limits: ModelLimits,
): Course {
  const said = saidByChapter(played);
  const chapters = played.map(({ chapter, file }) => mergeSaid(chapter, said.get(file) ?? []));
  const graph = makeGraph(chapters);
  const patterns = chapters.map(({ blocks }) =>
    blocks.flatMap(({ kind, place }) => (kind === 'pattern' ? [place] : [])),
  );
  const unsought = findUnsought(patterns, Object.keys(graph).length, limits);
  const left = new Set(unsought.map(({ place }) => place));
  return {
    ...joinFrame(frame, unsought),
    chapters: chapters.map((chapter) =>
      joinGraph(chapter, graph, (block) => !left.has(block.place)),
    ),
    labels: labelsOf(chapters),
    graph,
  };
}

/** What each chapter is said to have by others, by its file. */
export function saidByChapter(
  played: readonly Pick<PlayedChapter, 'elsewhere'>[],
): ReadonlyMap<string, readonly SaidElsewhere[]> {
  const said = new Map<string, SaidElsewhere[]>();
  for (const one of played.flatMap(({ elsewhere }) => elsewhere)) {
    const there = said.get(one.ref.chapter);
    if (there) there.push(one);
    else said.set(one.ref.chapter, [one]);
  }
  return said;
}

function labelsOf(chapters: readonly Chapter[]): Record<string, Label> {
  // No prototype: names come from the author's text.
  const labels: Record<string, Label> = Object.create(null);
  for (const { name, title, ref, place } of firstNames(chapters).values()) {
    if (ref) labels[name] = { name, ...(title !== undefined && { title }), ref, place };
  }
  return labels;
}

/** Puts into a chapter what only the whole course knows. */
function joinGraph(
  chapter: Chapter,
  graph: Course['graph'],
  mayLookFor: (pattern: Block) => boolean,
): Chapter {
  if (!chapter.blocks.some(({ kind }) => kind === 'pattern' || kind === 'game')) return chapter;
  const blocks = chapter.blocks.map((block): Block => {
    if (block.kind === 'pattern') {
      return mayLookFor(block) ? { ...block, matches: findPattern(block, graph) } : block;
    }
    const leaves = block.kind === 'game' && followGame(block.nodes, graph);
    return leaves ? { ...block, leaves } : block;
  });
  return { ...chapter, blocks };
}
