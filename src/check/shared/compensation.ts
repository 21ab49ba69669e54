/** Words by which an author shows that material is given on purpose, in the languages of the program. */
import type { PhrasingContent, RootContent } from 'mdast';
import {
  type Block,
  type Chapter,
  type MoveNode,
  type MovesBlock,
  walkText,
} from '../../model/index.ts';

/** They are said of this alone, so that a chapter's title or the paragraph beside a block counts. */
const plain = [
  'sacrific\\p{L}*',
  'sac(?:s|ked)?',
  'gambits?',
  'compensat\\p{L}*',
  'poison\\p{L}*',
  'taboo',
  'bait\\p{L}*',
  'decoy\\p{L}*',
  'desperado',
  'immune',
  'en prise',
  'exchange down',
  'traps?',
  'for free',
  '(?:give|gives|giving|gave|given) (?:up|back|away)',
  '(?:cannot|can.t|must not|mustn.t|should not|shouldn.t|may not|dare not) (?:be )?(?:take|taken|capture|captured|accept|accepted)',
  'win(?:s|ning)? (?:it|the \\p{L}+|a \\p{L}+|material) back',
  'regain\\p{L}*',
  'perpetual',
  'fortress',
  '\\p{L}*opfer\\p{L}*',
  '\\p{L}*gambit\\p{L}*',
  'kompensation\\p{L}*',
  'ersatz',
  'vergift\\p{L}*',
  'tabu',
  'köder\\p{L}*',
  'unantastbar\\p{L}*',
  'falle',
  'hängt',
  'hängen',
  'dauerschach',
  'festung',
  'darf (?:nicht )?(?:genommen|geschlagen)',
  'gambito\\p{L}*',
  'compensa\\p{L}*',
  'envenenad\\p{L}*',
  'tabú',
  'cebo',
  'intocable',
  'trampa\\p{L}*',
  'entrega\\p{L}*',
  'de menos',
  'perpetuo',
  'fortaleza',
];

/** They may be said of other things too: they count in the comments of the line alone. */
const hints = [
  'offer(?:s|ed|ing)?',
  'trick\\p{L}*',
  '(?:pawns?|piece|knight|bishop|rook|queen|exchange|material) (?:down|less|behind|for)',
  '(?:loses|lose|lost) (?:a |the )?(?:pawn|piece|knight|bishop|rook|queen|exchange|material)',
  'attack\\p{L}*',
  'initiative',
  'mate\\p{L}*',
  '(?:minder|weniger)\\p{L}*',
  '\\p{L}*angriff\\p{L}*',
  'matt\\p{L}*',
  'zurück\\p{L}*',
  '\\p{L}*verlust\\p{L}*',
  'ofrec\\p{L}*',
  'ataque\\p{L}*',
  'iniciativa',
  'mate',
  'recuper\\p{L}*',
  'pierde\\p{L}*',
];

function anyOf(words: readonly string[]): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'iu');
}

const said = anyOf(plain);
const saidOrHinted = anyOf([...plain, ...hints]);

/**
 * Whether somebody who comes to a move in its block reads of it: in a comment on the move, on the three
 * before it or on what follows it at once, in the paragraph before or behind the block, or in the title of
 * its chapter.
 */
export function isCompensationTold(chapter: Chapter, block: MovesBlock, node: MoveNode): boolean {
  const { nodes } = block;
  const near: MoveNode[] = node.children.flatMap((index) => nodes[index] ?? []);
  for (let at: MoveNode | undefined = node; at && near.length < node.children.length + 4; ) {
    near.push(at);
    at = at.parent === undefined ? undefined : nodes[at.parent];
  }
  if (near.some((each) => saidOrHinted.test(plainText(comments(each))))) return true;
  return said.test(chapter.title) || blocksTold(chapter).has(block);
}

function comments({ after }: MoveNode): PhrasingContent[] {
  return after.flatMap((item) =>
    item.type === 'comment'
      ? item.content
      : item.before.flatMap((comment) => [
          { type: 'text', value: ' ' } as const,
          ...comment.content,
        ]),
  );
}

const told = new WeakMap<Chapter, ReadonlySet<Block>>();

/** The blocks of a chapter that such words stand right before or behind. */
function blocksTold(chapter: Chapter): ReadonlySet<Block> {
  const known = told.get(chapter) ?? findTold(chapter);
  told.set(chapter, known);
  return known;
}

function findTold({ body, blocks }: Chapter): ReadonlySet<Block> {
  const found = new Set<Block>();
  const { children } = body;
  for (const [at, node] of children.entries()) {
    if (node.type === 'courseBlock' || !said.test(plainText([node]))) continue;
    for (const beside of [children[at - 1], children[at + 1]]) {
      const block = beside?.type === 'courseBlock' ? blocks[beside.block] : undefined;
      if (block) found.add(block);
    }
  }
  return found;
}

function plainText(content: readonly (RootContent | PhrasingContent)[]): string {
  const parts: string[] = [];
  walkText(content, (node) => {
    if (node.type === 'text') parts.push(node.value);
  });
  return parts.join(' ');
}
