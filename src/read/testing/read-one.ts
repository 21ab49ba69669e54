import type { PhrasingContent, RootContent } from 'mdast';
import { readChapter } from '../read-chapter.ts';
import type { ChapterSyntax } from '../types.ts';

/** Files of `games/` by their path. */
type Games = Readonly<Record<string, string>>;

/** Reads one chapter on its own, with the given pictures and games beside it. */
export function readOne(
  text: string,
  media: readonly string[] = [],
  games: Games = {},
): ChapterSyntax {
  return readChapter(
    { path: 'chapters/1.md', text },
    {
      media: new Set(media),
      games: new Map(Object.entries(games).map(([path, text]) => [path, { path, text }])),
      frontMatter: 'optional',
    },
  );
}

/** The problems of a chapter as `stretch of the text: message`. */
export function problemsOf(
  text: string,
  media: readonly string[] = [],
  games: Games = {},
): string[] {
  return readOne(text, media, games).problems.map(
    ({ place, message }) => `${text.slice(place.start.offset, place.end.offset)}: ${message}`,
  );
}

/** Text nodes as short strings: `type` or `type(content)`; adjacent texts are joined. */
export function shape(nodes: readonly (RootContent | PhrasingContent)[]): string[] {
  const shapes = nodes.flatMap((node): string[] => {
    switch (node.type) {
      case 'text':
        return [JSON.stringify(node.value)];
      case 'courseDirective':
        return [`:${node.name}(${node.argument})`];
      case 'positionLink':
        return [`pos(${node.label}: ${shape(node.children).join(' ')})`];
      case 'proseMoves':
        return [`moves(${node.moves.map(({ text }) => text).join(' | ')})`];
      case 'inlineCode':
        return [`code(${node.value})`];
      case 'image':
        return [`image(${node.url})`];
      default:
        return ['children' in node ? `${node.type}(${shape(node.children).join(' ')})` : node.type];
    }
  });
  const joined: string[] = [];
  for (const next of shapes) {
    const last = joined.at(-1);
    if (!last?.startsWith('"') || !next.startsWith('"')) joined.push(next);
    else joined[joined.length - 1] = JSON.stringify(JSON.parse(last) + JSON.parse(next));
  }
  return joined;
}

/** The first comment of the chapter's first block of moves. */
export function firstComment(draft: ChapterSyntax): string[] {
  const [block] = draft.blocks;
  if (block?.kind !== 'moves') return [];
  return shape(block.moves.comments[0]?.content ?? []);
}
