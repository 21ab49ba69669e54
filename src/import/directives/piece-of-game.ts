import { type PlainTag, partsOfComment, unpackText } from '../../movetext/index.ts';
import { textBlock } from '../markdown-text.ts';
import type { DraftGame } from '../types.ts';
import { exerciseBody } from './exercise-body.ts';
import { fenced } from './fenced.ts';
import { movesBody } from './moves-body.ts';
import { joinedTags, tagValue } from './tag-value.ts';

/** What `export --with-directives` makes games of. */
const kinds = ['course', 'chapter', 'text', 'moves', 'game', 'exercise', 'diagram'] as const;
type Kind = (typeof kinds)[number];

/** A piece of a course as it stands in its files. */
export interface Piece {
  readonly kind: Kind;
  /** The chapter's file, as it is named; nothing checks it. */
  readonly file: string;
  /** Title of its chapter, where the front matter is lost. */
  readonly title: string;
  /** Settings, front matter, or Markdown. */
  readonly text: string;
}

/** Whether a game is a piece of a course, with the source of its texts in its comments. */
export function isPiece({ tags }: Pick<DraftGame, 'tags'>): boolean {
  return tagValue(tags, 'Directives') === '1' && kindOf(tags) !== undefined;
}

export function pieceOfGame(game: DraftGame): Piece {
  const { tags, line, unread } = game;
  const kind = kindOf(tags) ?? 'text';
  const [file, title] = [tagValue(tags, 'File'), tagValue(tags, 'White')];
  if (kind === 'course' || kind === 'chapter') {
    const text = unpackText(line.before.map((comment) => comment.text).join(' ')).trim();
    return { kind, file, title, text };
  }
  const before = line.before.flatMap((comment) => partsOfComment(comment.text));
  const prose = before.filter(({ name }) => name === 'text').map((part) => unpackText(part.text));
  const own = before.filter(({ name }) => name !== 'text');
  const block = unread === undefined ? blockOf(game, kind, own) : textBlock(unread);
  const text = [...prose, block].map((each) => each.trimEnd()).filter((each) => each !== '');
  return { kind, file, title, text: text.join('\n\n') };
}

function blockOf(game: DraftGame, kind: Kind, before: ReturnType<typeof partsOfComment>): string {
  const info = attributesOf(game);
  const isWithMoves = kind === 'moves' || kind === 'game' || kind === 'exercise';
  if (kind === 'exercise' && game.line.moves.length > 0) {
    return fenced('exercise', info, exerciseBody(game, before));
  }
  if (isWithMoves) {
    const start = /\b(?:from|fen)\s*=/.test(info) || kind === 'game' ? '' : fenOf(game);
    return fenced(kind === 'game' ? 'game' : 'moves', `${info}${start}`, movesBody(game, before));
  }
  const body = before.filter(({ name }) => name === 'body').map(({ text }) => unpackText(text));
  const diagram = kind === 'diagram' ? fenced('diagram', info, body.join('\n')) : '';
  // Moves that somebody has added since.
  const rest = before.filter(({ name, text }) => name !== 'body' && text !== '');
  const isBare = game.line.moves.length === 0 && rest.length === 0;
  const added = isBare ? '' : fenced('moves', fenOf(game).trim(), movesBody(game, rest));
  return [diagram, added].filter((each) => each !== '').join('\n\n');
}

/** Attributes of the block; a game that came from a file stands in the chapter now. */
function attributesOf({ tags }: DraftGame): string {
  const info = joinedTags(tags, 'Attributes').replace(/'([^"']*)'/g, '"$1"');
  if (tagValue(tags, 'Comments') !== 'plain') return info;
  return info.replace(/\b(?:file|number)\s*=\s*(?:"[^"]*"|'[^']*'|\S+)\s*/g, '').trim();
}

function fenOf({ tags }: DraftGame): string {
  const fen = tagValue(tags, 'FEN');
  return fen === '' ? '' : ` fen="${fen}"`;
}

function kindOf(tags: readonly PlainTag[]): Kind | undefined {
  const value = tagValue(tags, 'Block');
  return kinds.find((kind) => kind === value);
}
