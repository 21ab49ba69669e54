import type { PhrasingContent, RootContent } from 'mdast';
import { initialPosition, isFenFault, type Position, parseFen } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type ChapterDraft,
  type CourseDraft,
  type CourseProblem,
  type DiagramDraft,
  type DirectiveNode,
  type MovesDraft,
  type NodeRef,
  type PlacedText,
  type ProseMovesNode,
  parseArrow,
  parseList,
} from '../read/index.ts';
import { type BlockTree, makeBlockTree, type TreeNode } from './block-tree.ts';
import { type LabelSite, sortLabelSites, walkText } from './collect-labels.ts';
import { findProseMoves, type ProseScope } from './find-prose-move.ts';
import { makeGraph } from './make-graph.ts';
import { playTree } from './play-tree.ts';
import type { Block, Chapter, Course, Label, Statement } from './types.ts';

interface BlockInWork {
  readonly tree: BlockTree;
  state: 'new' | 'open' | 'played';
  /** The node whose position a text behind the block speaks of. */
  shows?: NodeRef | undefined;
}

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
      blocks: chapter.blocks.map((block) => ({
        tree: makeTree(block, chapter.file),
        state: 'new',
      })),
      state: 'new',
    }),
  );
  for (const chapter of chapters) {
    problems.push(...chapter.draft.problems);
    for (const block of chapter.blocks) problems.push(...block.tree.problems);
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

  /** Plays a block; false while it is being played already, that is, where it needs itself. */
  function play(chapter: number, index: number): boolean {
    const block = chapters[chapter]?.blocks[index];
    const source = chapters[chapter]?.draft.blocks[index];
    if (!block || !source || block.state === 'open') return false;
    if (block.state === 'played') return true;
    block.state = 'open';
    const { nodes } = block.tree;
    const label = source.kind === 'moves' ? source.from : source.at;
    const start = source.fen
      ? positionOfFen(source.fen)
      : label
        ? positionOfLabel(label)
        : source.kind === 'diagram' && !source.after
          ? undefined
          : initialPosition;
    if (start) playTree(nodes, start);
    else
      for (const node of nodes) if (node.parent !== undefined) node.fault = { kind: 'after-fault' };
    if (source.kind === 'diagram' && label) block.shows = refs.get(label.text);
    else block.shows = { chapter, block: index, node: endOfMainLine(nodes) };
    block.state = 'played';
    return true;
  }

  function say(directive: DirectiveNode, at: NodeRef, place: Place): void {
    const node = nodeAt(at);
    if (!node) return;
    directive.at = at;
    const { name, argument } = directive;
    switch (name) {
      case 'here':
        if (sites.first.get(argument)?.directive === directive) {
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
      if (!block || chapters[chapter]?.draft.blocks[index]?.kind !== 'moves') continue;
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
        for (const comment of block?.tree.comments ?? []) {
          const at = { chapter: index, block: node.block, node: comment.node };
          walkText(comment.content, (inner) => {
            if (inner.type === 'courseDirective') say(inner, at, placeOf(inner));
            else if (inner.type === 'proseMoves') resolveProseMoves(inner, index, at);
          });
        }
      } else if (node.type === 'proseMoves') {
        resolveProseMoves(node, index);
        shown = node.moves.at(-1)?.target ?? shown;
      } else if (node.type === 'courseDirective') {
        if (shown) say(node, shown, placeOf(node));
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
  const finished = chapters.map((chapter, index) => finishChapter(chapter, index));
  return {
    settings: draft.settings,
    settingPlaces: draft.settingPlaces,
    chapters: finished,
    labels,
    repeatedLabels: sites.repeated.map(({ name, place }) => ({ name, place })),
    unplacedLabels,
    graph: makeGraph(finished),
    problems: [...draft.problems, ...problems],
  };

  function finishChapter({ draft: chapter, blocks }: ChapterInWork, index: number): Chapter {
    const view = draft.settings.side === 'both' ? 'white' : draft.settings.side;
    return {
      id: chapter.id,
      index,
      title: chapter.title,
      ...(chapter.summary === undefined ? {} : { summary: chapter.summary }),
      file: chapter.file,
      body: chapter.body,
      media: chapter.media,
      blocks: chapter.blocks.flatMap((source, blockIndex): Block[] => {
        const block = blocks[blockIndex];
        if (!block) return [];
        const base = {
          index: blockIndex,
          chapter: index,
          place: source.place,
          view: source.view ?? view,
        };
        return [
          source.kind === 'moves'
            ? { ...base, ...finishMoves(source, block) }
            : { ...base, ...finishDiagram(source, block) },
        ];
      }),
    };
  }

  function finishMoves(source: MovesDraft, { tree }: BlockInWork) {
    const tags = source.moves.movetext.tags.map(({ name, value }) => [name, value] as const);
    return {
      kind: 'moves' as const,
      nodes: tree.nodes,
      ...(source.from ? { from: labelUse(source.from) } : {}),
      tags: Object.fromEntries(tags),
      ...(tree.result === undefined ? {} : { result: tree.result }),
    };
  }

  function finishDiagram(source: DiagramDraft, { tree, shows }: BlockInWork) {
    const node = shows && nodeAt(shows);
    const own = source.at ? [] : tree.nodes;
    const said = own.at(-1);
    return {
      kind: 'diagram' as const,
      nodes: own,
      ...(node?.position ? { position: node.position } : {}),
      ...(node?.move ? { lastMove: { from: node.move.from, to: node.move.to } } : {}),
      ...(shows ? { shows } : {}),
      ...(source.at ? { at: labelUse(source.at) } : {}),
      caption: source.caption,
      ...(source.alt === undefined ? {} : { alt: source.alt }),
      marks: [...source.marks.map(({ text }) => text), ...(said?.marks ?? [])],
      arrows: [
        ...source.arrows.map(({ text, meaning }) => ({ meaning, ...parseArrow(text) })),
        ...(said?.arrows ?? []),
      ],
      claims: source.claims.map(
        ({ text, place }): Statement => ({ name: 'claim', argument: text, place }),
      ),
    };
  }
}

function makeTree(block: MovesDraft | DiagramDraft, file: string): BlockTree {
  const moves = block.kind === 'moves' ? block.moves : block.after;
  return makeBlockTree(moves ?? noMoves, file);
}

const noMoves: MovesDraft['moves'] = {
  movetext: {
    tags: [],
    line: { before: [], moves: [], span: { start: 0, end: 0 } },
    problems: [],
  },
  pointAt: (offset) => ({ line: 1, column: 1, offset }),
  comments: new Map(),
};

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
      for (const { content, node: at } of blocks[node.block]?.tree.comments ?? []) {
        walkText(content, (inner) =>
          add(inner, draft.file, { chapter: index, block: node.block, node: at }),
        );
      }
    });
  }
  return sites;
}

/** All texts of a chapter: its body, its comments, its captions. */
function textsOf({ draft, blocks }: ChapterInWork): (RootContent | PhrasingContent)[][] {
  return [
    draft.body.children,
    ...blocks.flatMap(({ tree }) => tree.comments.map(({ content }) => content)),
    ...draft.blocks.flatMap((block) => (block.kind === 'diagram' ? [block.caption] : [])),
  ];
}

function endOfMainLine(nodes: readonly TreeNode[]): number {
  let end = 0;
  for (let next = nodes[0]?.children[0]; next !== undefined; next = nodes[end]?.children[0]) {
    end = next;
  }
  return end;
}

function labelUse({ text, place }: PlacedText) {
  return { name: text, place };
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
