import { createLocator, type Point, withoutControls } from '../../diagnostics/index.ts';
import { eachGame, parseGames, type Span } from '../../movetext/index.ts';
import { suggestFile } from '../links/suggest.ts';
import { isEmpty, readMoves, readMovetext } from '../moves/read-moves.ts';
import { isLabel } from '../names.ts';
import type { PlacedText, SourceFile, TreeSyntax } from '../types.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';

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

/**
 * The most characters of games that a chapter may take from files, counted each time it shows one: as many as a
 * chapter itself may have.
 */
const mostShown = 1_000_000;

interface GamesFile {
  /** Without unprintable characters. */
  readonly text: string;
  /** Where the games that have moves stand in it. */
  readonly games: readonly Span[];
  readonly pointAt: (offset: number) => Point;
}

const known = new WeakMap<SourceFile, GamesFile>();

/** Scans a file of games once, however many blocks take a game from it. */
function gamesOf(source: SourceFile): GamesFile {
  const found = known.get(source) ?? findGames(source);
  known.set(source, found);
  return found;
}

/** Keeps only where the games stand: their trees would take many times the size of the file. */
function findGames(source: SourceFile): GamesFile {
  const text = withoutControls(source.text);
  const games: Span[] = [];
  for (const { tags, line, tooLong } of eachGame(text)) {
    if (line.moves.length === 0 && !tooLong) continue;
    games.push({ start: tags[0]?.span.start ?? line.span.start, end: line.span.end });
  }
  return { text, games, pointAt: createLocator(source.text) };
}

function readFile(
  file: PlacedText,
  number: PlacedText | undefined,
  context: BlockContext,
): TreeSyntax | undefined {
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
  const { text, games, pointAt } = gamesOf(source);
  const index = number === undefined ? 1 : Number(number.text);
  const span = Number.isInteger(index) ? games[index - 1] : undefined;
  if (!span) {
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
  context.shownGames.size += span.end - span.start;
  if (context.shownGames.size > mostShown) {
    context.report({
      place: number?.place ?? file.place,
      message: `The games that this chapter takes from files have more than ${mostShown / 1_000_000} MB with this one.`,
      hint: 'Divide the chapter into several, or show less of long games.',
    });
    return undefined;
  }
  const [game] = parseGames(text.slice(span.start, span.end));
  if (!game || game.tooLong) {
    context.report({
      place: number?.place ?? file.place,
      message: `This game of ${file.text} is longer than any game can be, with its comments and variations.`,
      hint: 'Name another one, or divide it.',
    });
    return undefined;
  }
  const inGame = (offset: number) => pointAt(span.start + offset);
  // Problems and comments of a game file have their places in that file, and its comments are plain text, not
  // Markdown.
  const inFile = {
    ...context,
    source: {
      ...context.source,
      file: source.path,
      text: source.text,
      pointAt,
    },
  };
  return readMovetext(game, inGame, inFile, 'plain');
}
