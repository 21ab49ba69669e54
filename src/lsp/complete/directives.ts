import { claimKinds, claimsAt, rules } from '../../check/index.ts';
import { type Course, documentsOf } from '../../model/index.ts';
import { directiveNames, inLettersOf, learnWords } from '../../read/index.ts';
import type { Asked } from '../asked.ts';
import { directiveWords } from '../words.ts';
import { CompletionItemKind, type Offer, type Offers } from './item.ts';
import type { CursorInMoves } from './piece.ts';

/** What a directive that stands at the cursor speaks of. */
export type SpeaksOf = () => CursorInMoves | undefined;

/** What may be written within a text: directives, what stands in their brackets, links to positions. */
export function textOffers(
  asked: Asked,
  offset: number,
  course: Course,
  speaksOf: SpeaksOf,
): Offers | undefined {
  const before = asked.text.slice(Math.max(0, offset - 400), offset);
  const line = /[^\r\n]*$/.exec(before)?.[0] ?? '';
  const link = /\]\(([^)\s]*)$/.exec(line);
  if (link) {
    const [, typed = ''] = link;
    return { start: offset - typed.length, offers: linkOffers(course, asked.file) };
  }
  const within = /:([a-z]+)\[([^\][]*)$/.exec(before);
  if (within) {
    const [, name = '', argument = ''] = within;
    return argumentOffers(name, argument, { asked, offset, course, speaksOf });
  }
  const named = /(?:^|[\s{(\][>*_"“.,;)-])(:[a-z]*)$/.exec(line);
  if (!named) return undefined;
  const [, typed = ''] = named;
  return {
    start: offset - typed.length,
    offers: directiveNames.map((name) => ({
      label: `:${name}`,
      kind: CompletionItemKind.Keyword,
      text: `:${name}[$0]`,
      words: directiveWords[name],
    })),
  };
}

function argumentOffers(
  name: string,
  argument: string,
  {
    asked,
    offset,
    course,
    speaksOf,
  }: {
    readonly asked: Asked;
    readonly offset: number;
    readonly course: Course;
    readonly speaksOf: SpeaksOf;
  },
): Offers | undefined {
  const start = offset - (/\S*$/.exec(argument)?.[0].length ?? 0);
  switch (name) {
    case 'same':
    case 'later': {
      const key = name === 'same' ? speaksOf()?.node.position?.key : undefined;
      return { start, offers: labelOffers(course, key) };
    }
    case 'learn':
      return {
        start,
        offers: learnWords.map((label) => ({ label, kind: CompletionItemKind.EnumMember })),
      };
    case 'allow':
      return argument.includes(' ') ? undefined : { start, offers: ruleOffers(asked, offset) };
    case 'claim':
      return claimOffers(argument, { offset, course, at: speaksOf() });
    default:
      return undefined;
  }
}

/** The names of the course; those of a position first, where one is given. */
export function labelOffers(course: Course, key?: string): Offer[] {
  return documentsOf(course).flatMap(({ names, file }) =>
    names.map(({ name, title, position, place }): Offer => {
      const words = [title, `${file}:${place.start.line}`].filter((one) => one !== undefined);
      const isHere = key !== undefined && position?.key === key;
      return {
        label: name,
        kind: CompletionItemKind.Reference,
        detail: isHere ? 'this position' : title,
        words: words.join('\n\n'),
        rank: isHere ? 0 : 5,
      };
    }),
  );
}

/** What a link in `from` may lead to: what lies beside it by its name, else by its path in the course. */
function linkOffers(course: Course, from: string): Offer[] {
  const folder = from.replace(/[^/]*$/, '');
  const names = labelOffers(course).map((offer) => ({ ...offer, label: `pos:${offer.label}` }));
  const chapters = documentsOf(course).map(
    ({ file, title }): Offer => ({
      label: file.startsWith(folder) ? file.slice(folder.length) : file,
      kind: CompletionItemKind.File,
      detail: title,
      rank: 6,
    }),
  );
  return [...names, ...chapters];
}

/** The rules; those that find something on the line first, as it was found last. */
function ruleOffers({ desk, file, open }: Asked, offset: number): Offer[] {
  const line = open.document.positionAt(offset).line + 1;
  const here = new Set(
    desk.lastFindings
      .filter(({ place }) => place.file === file && place.start.line === line)
      .map(({ rule }) => rule),
  );
  return rules.map(({ id, finds }) => ({
    label: id,
    kind: CompletionItemKind.EnumMember,
    text: `${id} $0`,
    detail: here.has(id) ? 'found on this line' : undefined,
    words: finds,
    rank: here.has(id) ? 0 : 5,
  }));
}

/** Claims: those that are true in the position first, then one of each kind as an example. */
export function claimOffers(
  argument: string,
  {
    offset,
    course,
    at,
  }: { readonly offset: number; readonly course: Course; readonly at: CursorInMoves | undefined },
): Offers {
  // What stands behind the last `and`, `or` or `after …:` is a claim of its own.
  const typed =
    /(?:^|\b(?:and|or)\s|:)\s*(?:not\s+)?([^:]*)$/.exec(
      argument.slice(
        Math.max(argument.lastIndexOf(' and ') + 1, argument.lastIndexOf(' or ') + 1, 0),
      ),
    )?.[1] ?? '';
  const { node, block } = at ?? {};
  const isDenied = /\bnot\s+\S*$/.test(argument);
  const holding =
    node?.position && block && !isDenied
      ? claimsAt(
          {
            position: node.position,
            before: block.nodes[node.parent ?? -1]?.position,
            tree: { nodes: block.nodes, castled: block.castled, index: node.index },
          },
          course,
          { typed },
        )
      : [];
  return {
    start: offset - typed.length,
    offers: [
      ...holding.map(
        (claim): Offer => ({
          label: inLettersOf(course.settings.pieces, claim),
          kind: CompletionItemKind.Value,
          detail: 'true here',
          rank: 0,
        }),
      ),
      ...claimKinds.map(
        ({ name, usage, definition }): Offer => ({
          label: name,
          kind: CompletionItemKind.Keyword,
          detail: usage.join(' | '),
          words: definition.trim(),
        }),
      ),
    ],
  };
}
