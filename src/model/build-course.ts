import type { PhrasingContent, RootContent } from 'mdast';
import { initialPosition, isFenFault, type Position, parseFen } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type ChapterDraft,
  type CourseDraft,
  type CourseProblem,
  type DirectiveNode,
  type MovetextDraft,
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
import { type LabelSite, sortLabelSites, walkText } from './collect-labels.ts';
import { findProseMoves, type ProseScope } from './find-prose-move.ts';
import { finishBlock } from './finish-block.ts';
import { followGame } from './follow-game.ts';
import { makeGraph } from './make-graph.ts';
import { findPattern } from './match-pattern.ts';
import { playTree } from './play-tree.ts';
import type { Block, Chapter, Course, Label } from './types.ts';

interface ChapterInWork {
  readonly draft: ChapterDraft;
  readonly blocks: BlockInWork[];
  state: 'new' | 'open' | 'resolved';
}

/**
 * Builds the model: plays every block, finds the position that each name, mark and statement
 * speaks of, and joins all positions in one graph. Nothing is judged: what cannot be played or
 * read is kept and marked.
 *
 * Names may be used before and across chapters, so a block is played when it is first needed:
 * `from="x"` plays the block in which `x` is named, and so on.
 */
export function buildCourse(draft: CourseDraft): Course {
  const problems: CourseProblem[] = [];
  const chapters = draft.chapters.map(
    (chapter): ChapterInWork => ({
      draft: chapter,
      blocks: chapter.blocks.map((block) => makeBlockInWork(block, chapter.file)),
      state: 'new',
    }),
  );
  for (const chapter of chapters) {
    problems.push(...chapter.draft.problems);
    for (const block of chapter.blocks) {
      for (const tree of treesOf(block)) problems.push(...tree.problems);
    }
  }
  const sites = sortLabelSites(collectSites(chapters));
  const refs = new Map<string, NodeRef>();
  // A name given in a comment has its node at once; one in prose must wait until it is known
  // which move the text spoke of last.
  for (const [name, { at }] of sites.first) if (at) refs.set(name, at);

  const nodeAt = (ref: NodeRef): TreeNode | undefined =>
    chapters[ref.chapter]?.blocks[ref.block]?.tree.nodes[ref.node];

  const report = (place: Place, message: string, hint: string) =>
    problems.push({ rule: 'chapter-unreadable', place, message, hint });

  function findLabel(name: string): NodeRef | undefined {
    if (!refs.has(name)) {
      const site = sites.first.get(name);
      const chapter = site && chapters.findIndex(({ draft: { file } }) => file === site.place.file);
      if (chapter !== undefined) resolveChapter(chapter);
    }
    return refs.get(name);
  }

  function positionOfLabel({ text, place }: PlacedText): Position | undefined {
    const ref = findLabel(text);
    if (ref && play(ref.chapter, ref.block)) return nodeAt(ref)?.position;
    if (sites.first.has(text)) {
      report(
        place,
        `This block starts from \`${text}\`, but the way to that position leads through this block.`,
        'Name the position in a block that stands on its own, or start this block otherwise.',
      );
    }
    return undefined;
  }

  function positionOfFen({ text, place }: PlacedText): Position | undefined {
    const position = parseFen(text);
    if (!isFenFault(position)) return position;
    const shift = Math.min(position.offset, text.length);
    const start = {
      line: place.start.line,
      column: place.start.column + shift,
      offset: place.start.offset + shift,
    };
    const length = Math.max(1, text.slice(shift).search(/[\s/]|$/));
    const end = { ...start, column: start.column + length, offset: start.offset + length };
    report(
      { file: place.file, start, end },
      `This FEN is no position: ${position.reason}.`,
      'Copy the FEN again from where it was made, or set the piece right by hand.',
    );
    return undefined;
  }

  /** The position that a block starts from; absent where it has none, which is told elsewhere. */
  function startOf({ draft: source }: BlockInWork): Position | undefined {
    if (source.kind === 'pattern') return undefined;
    if (source.kind === 'game') return startOfTags(source.moves) ?? initialPosition;
    if (source.fen) return positionOfFen(source.fen);
    if (source.kind === 'moves') {
      if (source.from) return positionOfLabel(source.from);
      return startOfTags(source.moves) ?? initialPosition;
    }
    if (source.at) return positionOfLabel(source.at);
    return source.after ? initialPosition : undefined;
  }

  /** The `FEN` tag of a pasted game (PGN standard, 9.7.2). */
  function startOfTags(moves: MovetextDraft | undefined): Position | undefined {
    const tag = moves?.movetext.tags.find(({ name }) => name === 'FEN');
    if (!tag || !moves) return undefined;
    const place = {
      file: moves.file,
      start: moves.pointAt(tag.valueSpan.start),
      end: moves.pointAt(tag.valueSpan.end),
    };
    return positionOfFen({ text: tag.value, place });
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
        node.marks.push(...parseList(argument));
        break;
      case 'plan':
      case 'threat':
      case 'guard':
        node.arrows.push(
          ...parseList(argument).map((arrow) => ({ meaning: name, ...parseArrow(arrow) })),
        );
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

  function resolveProseMoves(node: ProseMovesNode, chapter: number, own?: NodeRef): void {
    const blocks = chapters[chapter]?.blocks ?? [];
    const last = own ? own.block : blocks.findLastIndex(({ state }) => state === 'played');
    let found: { block: number; run: number[] } | undefined;
    for (let index = last; index >= 0; index--) {
      const block = blocks[index];
      if (block?.draft.kind !== 'moves' && block?.draft.kind !== 'game') continue;
      const scope: ProseScope = {
        nodes: block.tree.nodes,
        ...(own && own.block === index ? { at: own.node } : {}),
      };
      const run = findProseMoves(node.moves, scope);
      if (run.length > (found?.run.length ?? 0)) found = { block: index, run };
      if (run.length === node.moves.length) break;
    }
    for (const [index, move] of node.moves.entries()) {
      const target = found?.run[index];
      if (found && target !== undefined)
        move.target = { chapter, block: found.block, node: target };
    }
  }

  function resolveChapter(index: number): void {
    const chapter = chapters[index];
    if (chapter?.state !== 'new') return;
    chapter.state = 'open';
    const { file } = chapter.draft;
    const placeOf = (node: RootContent | PhrasingContent) => placeOfNode(node, file);
    let shown: NodeRef | undefined;
    walkText(chapter.draft.body.children, (node) => {
      if (node.type === 'courseBlock') {
        play(index, node.block);
        const block = chapter.blocks[node.block];
        shown = block?.shows ?? shown;
        for (const tree of block ? treesOf(block) : []) {
          for (const comment of tree.comments) {
            const own = { chapter: index, block: node.block, node: comment.node };
            const at = tree === block?.tree ? own : undefined;
            walkText(comment.content, (inner) => {
              if (inner.type === 'courseDirective') {
                say(inner, tree.nodes[comment.node], at, placeOf(inner));
              } else if (inner.type === 'proseMoves') resolveProseMoves(inner, index, at);
            });
          }
        }
        for (const text of block ? textsOfDraft(block.draft) : []) {
          walkText(text, (inner) => {
            if (inner.type === 'courseDirective') {
              say(inner, block?.shows && nodeAt(block.shows), block?.shows, placeOf(inner));
            } else if (inner.type === 'proseMoves') resolveProseMoves(inner, index);
          });
        }
      } else if (node.type === 'proseMoves') {
        resolveProseMoves(node, index);
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
    chapter.state = 'resolved';
  }

  for (const index of chapters.keys()) resolveChapter(index);

  const labels: Record<string, Label> = Object.create(null);
  const unplacedLabels: string[] = [];
  for (const [name, { place }] of sites.first) {
    const ref = refs.get(name);
    if (ref) labels[name] = { name, ref, place };
    else unplacedLabels.push(name);
  }
  for (const chapter of chapters) {
    for (const text of textsOf(chapter)) {
      walkText(text, (node) => {
        const target = node.type === 'positionLink' ? labels[node.label]?.ref : undefined;
        if (node.type === 'positionLink' && target) node.target = target;
      });
    }
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
        finishBlock(block, { index: blockIndex, chapter: index, view, nodeAt, keyOfLabel }),
      ),
    }),
  );
  const graph = makeGraph(plain);
  return {
    settings: draft.settings,
    settingPlaces: draft.settingPlaces,
    chapters: plain.map((chapter) => ({
      ...chapter,
      blocks: chapter.blocks.map((block) => joinGraph(block, graph)),
    })),
    labels,
    repeatedLabels: sites.repeated.map(({ name, place }) => ({ name, place })),
    unplacedLabels,
    graph,
    problems: [...draft.problems, ...problems],
  };
}

/** Puts into a block what only the whole course knows. */
function joinGraph(block: Block, graph: Course['graph']): Block {
  if (block.kind === 'pattern') return { ...block, matches: findPattern(block, graph) };
  if (block.kind !== 'game') return block;
  const leaves = followGame(block.nodes, graph);
  return leaves ? { ...block, leaves } : block;
}

/** Every place where a name is given, in the order of the text. */
function collectSites(chapters: readonly ChapterInWork[]): LabelSite[] {
  const sites: LabelSite[] = [];
  const add = (node: RootContent | PhrasingContent, file: string, at?: NodeRef) => {
    if (node.type !== 'courseDirective' || node.name !== 'here') return;
    const site = { name: node.argument, place: placeOfNode(node, file), directive: node };
    sites.push(at ? { ...site, at } : site);
  };
  for (const [index, { draft, blocks }] of chapters.entries()) {
    walkText(draft.body.children, (node) => {
      add(node, draft.file);
      if (node.type !== 'courseBlock') return;
      const block = blocks[node.block];
      if (!block) return;
      // Only the block's own tree has addresses; a name in an exercise's line is reported later.
      for (const { content, node: at } of block.tree.comments) {
        walkText(content, (inner) =>
          add(inner, draft.file, { chapter: index, block: node.block, node: at }),
        );
      }
    });
  }
  return sites;
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

function placeOfNode(node: RootContent | PhrasingContent, file: string): Place {
  const point = (
    at: { line: number; column: number; offset?: number | undefined } | undefined,
  ) => ({
    line: at?.line ?? 1,
    column: at?.column ?? 1,
    offset: at?.offset ?? 0,
  });
  return { file, start: point(node.position?.start), end: point(node.position?.end) };
}
