import type { PhrasingContent, RootContent } from 'mdast';
import { initialPosition, type Position } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type ChapterDraft,
  type CourseDraft,
  type CourseProblem,
  type DirectiveNode,
  type NodeRef,
  type PlacedText,
  type ProseMovesNode,
  parseArrow,
  parseList,
} from '../read/index.ts';
import {
  type BlockInWork,
  endOfMainLine,
  makeBlockInWork,
  textsOfDraft,
  treesOf,
} from './block-in-work.ts';
import type { TreeNode } from './block-tree.ts';
import { collectLabels, type LabelSite } from './collect-labels.ts';
import { findProseMoves, type ProseScope } from './find-prose-move.ts';
import { finishBlock } from './finish-block.ts';
import { followGame } from './follow-game.ts';
import { makeGraph } from './make-graph.ts';
import { findPattern } from './match-pattern.ts';
import { modelLimits } from './model-limits.ts';
import { placeOfNode } from './place-of-node.ts';
import { playTree } from './play-tree.ts';
import { orderShowing, type Showing, type ShowingOrder } from './showing.ts';
import { positionOfFen, startOfTags } from './start-position.ts';
import type { Block, Chapter, Course, Label } from './types.ts';
import { walkText } from './walk-text.ts';

interface ChapterInWork {
  readonly draft: ChapterDraft;
  readonly blocks: BlockInWork[];
  showing?: ShowingOrder;
  /** What the text has shown last, at a place of that order; null where nothing has been shown. */
  readonly shownAt: Map<number, NodeRef | null>;
}

/**
 * Builds the model: plays every block, finds the position that each name, mark and statement
 * speaks of, and joins all positions in one graph. Nothing is judged: what cannot be played or
 * read is kept and marked.
 *
 * Names may be used before and across chapters, so a block is played when it is first needed:
 * `from="x"` plays the block in which `x` is named, and so on.
 */
export function buildCourse(draft: CourseDraft, limits = modelLimits): Course {
  const problems: CourseProblem[] = [];
  const chapters = draft.chapters.map(
    (chapter): ChapterInWork => ({
      draft: chapter,
      blocks: chapter.blocks.map((block) => makeBlockInWork(block, chapter.file)),
      shownAt: new Map(),
    }),
  );
  for (const chapter of chapters) {
    for (const problem of chapter.draft.problems) problems.push(problem);
    for (const block of chapter.blocks) {
      for (const tree of treesOf(block)) {
        for (const problem of tree.problems) problems.push(problem);
      }
    }
  }
  /** How many blocks are being played now, each since the one before starts from it. */
  let depth = 0;
  const budget = { left: limits.places };
  let isTold = false;
  const sites = collectLabels(chapters);
  const refs = new Map<string, NodeRef>();
  // A name given in a comment has its node at once; one in prose must wait until it is known
  // which move the text spoke of last.
  for (const [name, { at }] of sites.first) if (at) refs.set(name, at);

  const nodeAt = (ref: NodeRef): TreeNode | undefined =>
    chapters[ref.chapter]?.blocks[ref.block]?.tree.nodes[ref.node];

  const report = (place: Place, message: string, hint: string) =>
    problems.push({ rule: 'chapter-unreadable', place, message, hint });

  /** Where a name stands; `circle` where finding it needs a block that is being played now. */
  function findLabel(name: string): NodeRef | 'circle' | undefined {
    const site = sites.first.get(name);
    if (site && !refs.has(name)) {
      const ref = shownBefore(site);
      if (ref === 'circle') return ref;
      if (ref) refs.set(name, ref);
    }
    return refs.get(name);
  }

  function positionOfLabel({ text, place }: PlacedText): Position | undefined {
    if (depth >= limits.chain) {
      report(
        place,
        `More than ${limits.chain} blocks start from one another here, each before the one it starts from.`,
        'Put each block behind the one that it starts from.',
      );
      return undefined;
    }
    depth++;
    const position = positionAt(text, place);
    depth--;
    return position;
  }

  function positionAt(text: string, place: Place): Position | undefined {
    const ref = findLabel(text);
    // A name that stands nowhere, or where no move is shown, has a finding of its own.
    if (!ref) return undefined;
    if (ref !== 'circle' && play(ref.chapter, ref.block)) return nodeAt(ref)?.position;
    report(
      place,
      `This block starts from \`${text}\`, but the way to that position leads through this block.`,
      'Name the position in a block that stands on its own, or start this block otherwise.',
    );
    return undefined;
  }

  /** The last move shown before a name that prose or a caption gives. */
  function shownBefore(site: LabelSite): NodeRef | 'circle' | undefined {
    const { chapter: index, within } = site;
    const chapter = chapters[index];
    if (!chapter) return undefined;
    if (within !== undefined) {
      return play(index, within) ? chapter.blocks[within]?.shows : 'circle';
    }
    chapter.showing ??= orderShowing(chapter.draft.body.children);
    const { all, before } = chapter.showing;
    // What was passed over once, because it shows nothing, is not looked at again for the next name.
    const passed: number[] = [];
    let isSure = true;
    let shown: NodeRef | undefined;
    for (let at = (before.get(site.directive) ?? 0) - 1; at >= 0 && !shown; at--) {
      const known = chapter.shownAt.get(at);
      if (known !== undefined) {
        shown = known ?? undefined;
        break;
      }
      passed.push(at);
      const { block, moves } = all[at] as Showing;
      if (moves) {
        isSure = resolveProseMoves(moves, index, block) && isSure;
        shown = moves.moves.at(-1)?.target;
      } else {
        if (!play(index, block)) return 'circle';
        shown = chapter.blocks[block]?.shows;
      }
    }
    if (isSure) for (const at of passed) chapter.shownAt.set(at, shown ?? null);
    return shown;
  }

  /** The position that a block starts from; absent where it has none, which is told elsewhere. */
  function startOf({ draft: source }: BlockInWork): Position | undefined {
    if (source.kind === 'pattern') return undefined;
    if (source.kind === 'game') return startOfTags(source.moves, report);
    if (source.fen) return positionOfFen(source.fen, report);
    if (source.kind === 'moves') {
      if (source.from) return positionOfLabel(source.from);
      return startOfTags(source.moves, report);
    }
    if (source.at) return positionOfLabel(source.at);
    return source.after ? initialPosition : undefined;
  }

  /** Plays a block; false while it is being played already, that is, where it needs itself. */
  function play(chapter: number, index: number): boolean {
    const block = chapters[chapter]?.blocks[index];
    if (!block || block.state === 'open') return false;
    if (block.state === 'played') return true;
    block.state = 'open';
    const { draft: source } = block;
    const start = startOf(block);
    playTree(block.tree.nodes, start);
    const label = source.kind === 'diagram' || source.kind === 'exercise' ? source.at : undefined;
    if (label) block.shows = refs.get(label.text);
    else if (source.kind !== 'pattern') {
      block.shows = { chapter, block: index, node: endOfMainLine(block.tree.nodes) };
    }
    const shown = block.shows && nodeAt(block.shows)?.position;
    for (const { nodes } of [...block.lines.answer, ...block.lines.also, ...block.lines.wrong]) {
      playTree(nodes, shown);
    }
    block.state = 'played';
    return true;
  }

  /** Lets a directive speak of a node; `at` is absent in an exercise, whose lines have no address. */
  function say(
    directive: DirectiveNode,
    node: TreeNode | undefined,
    at: NodeRef | undefined,
    place: Place,
  ): void {
    // Speaks to the check, of its line, not of a position.
    if (!node || directive.name === 'allow') return;
    if (at) directive.at = at;
    const { name, argument } = directive;
    switch (name) {
      case 'here':
        if (!at) {
          report(
            place,
            'A position of an exercise cannot be named: it would give the answer away.',
            'Name it in a `moves` block.',
          );
        } else if (sites.first.get(argument)?.directive === directive) {
          refs.set(argument, at);
          node.labels.push(argument);
        }
        break;
      case 'mark':
        for (const square of parseList(argument)) node.marks.push(square);
        break;
      case 'plan':
      case 'threat':
      case 'guard':
        for (const arrow of parseList(argument)) {
          node.arrows.push({ meaning: name, ...parseArrow(arrow) });
        }
        break;
      default:
        node.statements.push({
          name,
          argument,
          place,
          ...(name === 'same' || name === 'later' ? { label: { name: argument, place } } : {}),
        });
    }
  }

  /**
   * Finds the moves that a text mentions in the blocks from `last` back to the chapter's first; false
   * where a block that is being played now could not be looked into.
   */
  function resolveProseMoves(
    node: ProseMovesNode,
    chapter: number,
    last: number,
    own?: NodeRef,
  ): boolean {
    const blocks = chapters[chapter]?.blocks ?? [];
    let isSure = true;
    let found: { block: number; run: number[] } | undefined;
    for (let index = last; index >= 0 && budget.left > 0; index--) {
      const block = blocks[index];
      if (block?.draft.kind !== 'moves' && block?.draft.kind !== 'game') continue;
      if (!play(chapter, index)) {
        isSure = false;
        continue;
      }
      const scope: ProseScope = {
        nodes: block.tree.nodes,
        ...(own && own.block === index ? { at: own.node } : {}),
      };
      const run = findProseMoves(node.moves, scope, budget);
      if (run.length > (found?.run.length ?? 0)) found = { block: index, run };
      if (run.length === node.moves.length) break;
    }
    for (const [index, move] of node.moves.entries()) {
      const target = found?.run[index];
      if (found && target !== undefined)
        move.target = { chapter, block: found.block, node: target };
    }
    if (budget.left <= 0 && found?.run.length !== node.moves.length) {
      node.unsought = true;
      if (!isTold) {
        report(
          placeOfNode(node, chapters[chapter]?.draft.file ?? ''),
          `From here on the moves in the texts are not looked for: more than ${limits.places.toLocaleString('en')} places have been looked at.`,
          'Divide the chapter into several; write moves that are in no block without their number.',
        );
      }
      isTold = true;
    }
    return isSure;
  }

  /** Resolves what the comments, captions and questions of a block say. */
  function hearBlock(
    block: BlockInWork,
    file: string,
    place: { chapter: number; block: number },
  ): void {
    const hear = (
      content: readonly (RootContent | PhrasingContent)[],
      speaksOf: { node: TreeNode | undefined; at: NodeRef | undefined },
      own?: NodeRef,
    ) =>
      walkText(content, (inner) => {
        if (inner.type === 'courseDirective') {
          say(inner, speaksOf.node, speaksOf.at, placeOfNode(inner, file));
        } else if (inner.type === 'proseMoves') {
          resolveProseMoves(inner, place.chapter, place.block, own);
        }
      });
    for (const tree of treesOf(block)) {
      for (const { node, content } of tree.comments) {
        const at = tree === block.tree ? { ...place, node } : undefined;
        hear(content, { node: tree.nodes[node], at }, at);
      }
    }
    const at = block.shows;
    for (const text of textsOfDraft(block.draft)) hear(text, { node: at && nodeAt(at), at });
  }

  function resolveChapter(chapter: ChapterInWork, index: number): void {
    const { file } = chapter.draft;
    const placeOf = (node: RootContent | PhrasingContent) => placeOfNode(node, file);
    let shown: NodeRef | undefined;
    let last = -1;
    walkText(chapter.draft.body.children, (node) => {
      if (node.type === 'courseBlock') {
        last = node.block;
        play(index, node.block);
        const block = chapter.blocks[node.block];
        shown = block?.shows ?? shown;
        if (block) hearBlock(block, file, { chapter: index, block: node.block });
      } else if (node.type === 'proseMoves') {
        resolveProseMoves(node, index, last);
        shown = node.moves.at(-1)?.target ?? shown;
      } else if (node.type === 'courseDirective') {
        if (shown || node.name === 'allow') say(node, shown && nodeAt(shown), shown, placeOf(node));
        else {
          report(
            placeOf(node),
            `\`:${node.name}[…]\` speaks of the last move shown, but this chapter shows no move before it.`,
            'Put it behind a block of moves, or into a comment of one.',
          );
        }
      }
    });
  }

  for (const [index, chapter] of chapters.entries()) resolveChapter(chapter, index);

  const labels: Record<string, Label> = Object.create(null);
  const unplacedLabels: string[] = [];
  for (const [name, { place }] of sites.first) {
    const ref = refs.get(name);
    if (ref) labels[name] = { name, ref, place };
    else unplacedLabels.push(name);
  }
  const { news = [] } = draft;
  for (const text of [...chapters.flatMap(textsOf), ...news.map(({ body }) => body.children)]) {
    walkText(text, (node) => {
      const target = node.type === 'positionLink' ? labels[node.label]?.ref : undefined;
      if (node.type === 'positionLink' && target) node.target = target;
    });
  }
  const view = draft.settings.side === 'both' ? 'white' : draft.settings.side;
  const keyOfLabel = (name: string) => {
    const ref = refs.get(name);
    return ref && nodeAt(ref)?.position?.key;
  };
  const plain = chapters.map(
    ({ draft: chapter, blocks }, index): Chapter => ({
      id: chapter.id,
      index,
      title: chapter.title,
      ...(chapter.summary === undefined ? {} : { summary: chapter.summary }),
      file: chapter.file,
      body: chapter.body,
      media: chapter.media,
      blocks: blocks.map((block, blockIndex) =>
        finishBlock(block, { index: blockIndex, chapter: index, view, nodeAt, keyOfLabel, report }),
      ),
    }),
  );
  const graph = makeGraph(plain);
  const positions = Object.keys(graph).length;
  let looked = 0;
  /** Whether a pattern may be looked for, in all positions of the course; if not it is reported. */
  const mayLookFor = ({ place }: Block): boolean => {
    looked += positions;
    if (looked <= limits.matched) return true;
    report(
      place,
      `This pattern is not looked for: with those before it, it would be compared ${looked.toLocaleString('en')} times with a position.`,
      'Leave out patterns that say nothing, or divide the course into several.',
    );
    return false;
  };
  return {
    settings: draft.settings,
    settingPlaces: draft.settingPlaces,
    ...(draft.missingId && { missingId: draft.missingId }),
    chapters: plain.map((chapter) => ({
      ...chapter,
      blocks: chapter.blocks.map((block) => joinGraph(block, graph, mayLookFor)),
    })),
    news: news
      .map(({ problems: _, ...entry }) => entry)
      .sort((a, b) => (b.date + b.name > a.date + a.name ? 1 : -1)),
    labels,
    repeatedLabels: sites.repeated.map(({ name, place }) => ({ name, place })),
    unplacedLabels,
    graph,
    problems: [...draft.problems, ...problems, ...news.flatMap((entry) => entry.problems)],
  };
}

/** Puts into a block what only the whole course knows. */
function joinGraph(
  block: Block,
  graph: Course['graph'],
  mayLookFor: (pattern: Block) => boolean,
): Block {
  if (block.kind === 'pattern') {
    return mayLookFor(block) ? { ...block, matches: findPattern(block, graph) } : block;
  }
  if (block.kind !== 'game') return block;
  const leaves = followGame(block.nodes, graph);
  return leaves ? { ...block, leaves } : block;
}

/** All texts of a chapter: its body, its comments, its captions and questions. */
function textsOf({ draft, blocks }: ChapterInWork): (RootContent | PhrasingContent)[][] {
  return [
    draft.body.children,
    ...blocks.flatMap((block) => [
      ...treesOf(block).flatMap(({ comments }) => comments.map(({ content }) => content)),
      ...textsOfDraft(block.draft),
    ]),
  ];
}
