import type { Element, ElementContent, Root, Text } from 'hast';
import { chapterIds, gameMoves } from '../../addresses/index.ts';
import type { Chapter, MoveNode, NodeRef } from '../../model/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { RenderContext } from '../context.ts';
import { element } from '../hast.ts';
import { replaceWhere } from '../replace-where.ts';
import { partOfText } from '../written-at.ts';

/** A move of the chapter that a text may mean. */
interface Place {
  readonly ref: NodeRef;
  readonly key: string;
  /** Index of its block among those of the chapter. */
  readonly block: number;
  /** How many variations it is in. */
  readonly depth: number;
}

/** Every mention matches this; hardly any text does. */
const numberLike = /\d[.…]/;

/** Text inside these is a link already, or does not speak of a position. */
const closed = /^(?:a|code|pre|h[1-6]|summary|button)$/;

/**
 * Links numbered moves in a text, as in `after 9.Bg5`, to their node in the chapter: in the block before the text,
 * else in an earlier one, else in a later one. A mention that may mean several positions stays text.
 */
export function linkMentions(tree: Root, { chapter, strings }: RenderContext): void {
  const places = placesOf(chapter);
  if (places.size === 0) return;
  const mention = mentionOf(strings);
  const blocks = new Map(
    chapter.blocks.map((block, index) => [chapterIds(chapter).ofNode(block, 0), index]),
  );
  let last = -1;

  function walk(parent: Root | Element): void {
    const { id } = 'properties' in parent ? parent.properties : {};
    last = (typeof id === 'string' ? blocks.get(id) : undefined) ?? last;
    parent.children = replaceWhere(parent.children as ElementContent[], (node) => {
      if (node.type === 'text' && numberLike.test(node.value)) return split(node);
      if (node.type === 'element' && !closed.test(node.tagName) && node.data?.role !== 'move') {
        walk(node);
      }
      return node;
    });
  }

  function split(node: Text): ElementContent | ElementContent[] {
    const { value } = node;
    const parts: ElementContent[] = [];
    let done = 0;
    for (const found of value.matchAll(mention.pattern)) {
      const ref = nearest(places.get(mention.nameOf(found)) ?? [], last);
      if (ref === undefined) continue;
      if (found.index > done) parts.push(partOfText(node, done, found.index));
      const data = { role: 'mention', target: { to: 'place', ref }, link: 'move' } as const;
      const end = found.index + found[0].length;
      const words = partOfText(node, found.index, end);
      parts.push(element('a', { className: ['prose-move'] }, [words], data));
      done = end;
    }
    if (parts.length === 0) return node;
    return done < value.length ? [...parts, partOfText(node, done)] : parts;
  }

  walk(tree);
}

type Mention = ReturnType<typeof makeMention>;

const known = new WeakMap<Strings, Mention>();

/** The pattern of a numbered move in a text, and its key among the places. */
function mentionOf(strings: Strings): Mention {
  const mention = known.get(strings) ?? makeMention(strings);
  known.set(strings, mention);
  return mention;
}

function makeMention({ pieceLetters }: Strings) {
  const local = new Map(Object.entries(pieceLetters).filter(([, letter]) => letter !== ''));
  const english: Readonly<Record<string, string>> = {
    king: 'K',
    queen: 'Q',
    rook: 'R',
    bishop: 'B',
    knight: 'N',
  };
  const byLetter = new Map([...local].map(([kind, letter]) => [letter, english[kind] ?? '']));
  const letters = [...byLetter.keys()].join('');
  const pattern = new RegExp(
    `(?<![\\p{L}\\p{N}.])(\\d{1,3})(\\.{3}|…|\\.)[ \\u00a0]?` +
      `([${letters}]?[a-h]?[1-8]?x?[a-h][1-8](?:=?[${letters}])?|[O0]-[O0](?:-[O0])?)` +
      '[+#]?(?![\\p{L}\\p{N}-])',
    'gu',
  );
  const toEnglish = (san: string) =>
    san.replace(/\p{Lu}/gu, (letter) => byLetter.get(letter) ?? letter);
  return {
    pattern,
    nameOf([, number = '', dots = '', san = '']: RegExpMatchArray): string {
      return nameOf(Number(number), dots === '.' ? 'white' : 'black', toEnglish(san));
    },
  };
}

function nameOf(number: number, color: string, san: string): string {
  return `${number} ${color} ${san.replace(/[+#x=]/g, '').replace(/0/g, 'O')}`;
}

function placesOf(chapter: Chapter): ReadonlyMap<string, readonly Place[]> {
  const places = new Map<string, Place[]>();
  for (const [index, block] of chapter.blocks.entries()) {
    if (block.kind !== 'moves' && block.kind !== 'game') continue;
    const { nodes, source } =
      block.kind === 'game' ? gameMoves(block) : { nodes: block.nodes, source: undefined };
    const depths: number[] = [];
    for (const { index: at, move, parent, position } of nodes) {
      depths[at] = depthOf(nodes, at, parent, depths);
      if (move === undefined || position === undefined) continue;
      const ref = { chapter: chapter.file, block: block.key, node: source?.[at] ?? at };
      const place = { ref, key: position.key, block: index, depth: depths[at] };
      const name = nameOf(move.number, move.color, move.san);
      const known = places.get(name);
      if (known === undefined) places.set(name, [place]);
      else known.push(place);
    }
  }
  return places;
}

function depthOf(
  nodes: readonly MoveNode[],
  at: number,
  parent: number | undefined,
  depths: readonly number[],
): number {
  if (parent === undefined) return 0;
  const isMain = nodes[parent]?.children[0] === at;
  return (depths[parent] ?? 0) + (isMain ? 0 : 1);
}

/**
 * The least nested match in the block before the text, else in the nearest earlier one, else in the first later one;
 * undefined if several positions match equally.
 */
function nearest(places: readonly Place[], last: number): NodeRef | undefined {
  const before = places.filter(({ block }) => block <= last);
  const block =
    before.length > 0 ? Math.max(...before.map((each) => each.block)) : places[0]?.block;
  const there = places.filter((each) => each.block === block);
  const depth = Math.min(...there.map((each) => each.depth));
  const [first, ...others] = there.filter((each) => each.depth === depth);
  return others.every(({ key }) => key === first?.key) ? first?.ref : undefined;
}
