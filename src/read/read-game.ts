import { createLocator, type Point, withoutControls } from '../diagnostics/index.ts';
import { type Movetext, parseGames } from '../movetext/index.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';
import { isLabel } from './names.ts';
import { isEmpty, readMoves, readMovetext } from './read-moves.ts';
import { suggestFile } from './suggest.ts';
import type { MovetextDraft, PlacedText, SourceFile } from './types.ts';

/** Reads a `game`: movetext with tags in the body, or a game of a file in `games/`. */
export function readGame(fence: Fence, context: BlockContext) {
  const { attributes } = fence;
  const file = attributes.get('file');
  const number = attributes.get('number');
  const limits = { ...limit('from', fence, context), ...limit('to', fence, context) };
  if (!file) {
    if (number) {
      context.report({
        place: number.namePlace,
        message: 'This game gives a number, but no file to take the game from.',
        hint: 'Write file="games/….pgn" before it, or leave the number out.',
      });
    }
    const moves = readMoves(fence.content, fence.pointAt, context);
    if (fence.closed && isEmpty(moves)) {
      context.report({
        place: fence.opening,
        message: 'This game has no moves.',
        hint: 'Write them between this line and the closing one, or name a file: file="games/….pgn".',
      });
    }
    return { moves, file: context.source.file, ...limits };
  }
  const written = fence.content.search(/\S/);
  if (written >= 0) {
    context.report({
      place: {
        file: context.source.file,
        start: fence.pointAt(written),
        end: fence.pointAt(fence.content.trimEnd().length),
      },
      message: `This block takes its game from ${file.text}, so what stands in it is not read.`,
      hint: 'Leave out these lines, or the attribute `file`.',
    });
  }
  return { moves: readFile(file, number, context), file: file.text, ...limits };
}

/** A move number or the name of a position. */
function limit<Name extends 'from' | 'to'>(name: Name, fence: Fence, { report }: BlockContext) {
  const value = fence.attributes.get(name);
  if (value && !isLabel(value.text)) {
    report({
      place: value.place,
      message: `\`${value.text}\` is neither a move number nor a name for a position.`,
      hint: `Write ${name}=12, or ${name}="…" with a name that \`:here[…]\` gives.`,
    });
  }
  return (value ? { [name]: { text: value.text, place: value.place } } : {}) as {
    [key in Name]?: PlacedText;
  };
}

interface ParsedFile {
  /** The games that have moves. */
  readonly games: readonly Movetext[];
  readonly pointAt: (offset: number) => Point;
}

const parsed = new WeakMap<SourceFile, ParsedFile>();

/** A file of many games is parsed once, however many blocks take a game from it. */
function gamesOf(source: SourceFile): ParsedFile {
  const known = parsed.get(source) ?? {
    games: parseGames(withoutControls(source.text)).filter(({ line }) => line.moves.length > 0),
    pointAt: createLocator(source.text),
  };
  parsed.set(source, known);
  return known;
}

function readFile(
  file: PlacedText,
  number: PlacedText | undefined,
  context: BlockContext,
): MovetextDraft | undefined {
  const source = context.games.get(file.text);
  if (!source) {
    const near = suggestFile(context.games, file.text);
    context.report({
      place: file.place,
      message: `There is no file ${file.text} in the course.`,
      hint: near
        ? `Did you mean \`${near}\`?`
        : 'Games are PGN files in games/; name one as `games/….pgn`.',
    });
    return undefined;
  }
  const { games, pointAt } = gamesOf(source);
  const index = number === undefined ? 1 : Number(number.text);
  const game = Number.isInteger(index) ? games[index - 1] : undefined;
  if (!game) {
    context.report({
      place: number?.place ?? file.place,
      message:
        games.length === 0
          ? `${file.text} has no game.`
          : `\`${number?.text}\` is no game of ${file.text}: it has ${games.length}, counted from 1.`,
      hint: 'Name the game with number=1 and so on.',
    });
    return undefined;
  }
  // A game file is no chapter: its problems and comments stand in it, and its comments are plain.
  const inFile = {
    ...context,
    source: {
      ...context.source,
      file: source.path,
      text: source.text,
      pointAt,
    },
  };
  return readMovetext(game, pointAt, inFile, 'plain');
}
