import { initialPosition } from '../../../chess/index.ts';
import type { Chapter, Course } from '../../../model/index.ts';
import type { PlainTag } from '../../../movetext/index.ts';
import { fitTag } from '../strict-game.ts';
import type { BlockGame } from './block-game.ts';

/** What a string of the standard may have at most, with room for its name (7). */
const longestPiece = 200;

export interface TagFacts {
  readonly course: Course;
  /** Absent for the settings of the course. */
  readonly chapter: Chapter | undefined;
  readonly game: BlockGame;
  readonly round: string;
}

/**
 * The seven tags of the standard in its order, then the others by their names (8.1.1). Those that the author wrote are
 * named by `OwnTags`, since an import must tell them from ours.
 */
export function tagsOf({ course, chapter, game, round }: TagFacts): PlainTag[] {
  const { kind, tags = [], attributes = '', position, result, hasPlainComments } = game;
  const own = new Map(tags.map(({ name, value }) => [name, value]));
  const roster = [
    ['Event', titleTag('Event', course.settings.title)],
    ['Site', course.settings.site ?? '?'],
    ['Date', '????.??.??'],
    ['Round', round],
    ['White', titleTag('White', chapter?.title ?? course.settings.title)],
    ['Black', kind],
    ['Result', result ?? '*'],
  ] as const;
  const others = new Map(own);
  for (const [name] of roster) others.delete(name);
  others.set('Directives', '1');
  others.set('Block', kind);
  if (chapter) others.set('File', chapter.file);
  if (hasPlainComments) others.set('Comments', 'plain');
  const names = [...own.keys(), ...(result === undefined ? [] : ['result'])];
  for (const [name, value] of [
    ...pieces('Attributes', singleQuoted(attributes)),
    ...pieces('OwnTags', names.join(' ')),
  ]) {
    others.set(name, value);
  }
  if (position !== undefined && position.fen !== initialPosition.fen) {
    others.set('SetUp', '1');
    others.set('FEN', position.fen);
  }
  const sorted = [...others].sort(([a], [b]) => (a < b ? -1 : 1));
  const all = [
    ...roster.map(([name, value]) => [name, own.get(name) ?? value] as const),
    ...sorted,
  ];
  return all.map(([name, value]) => ({ name, value }));
}

/** The title itself stands in the front matter; strict readers take no quote within a string. */
function titleTag(name: string, title: string): string {
  return fitTag(name, title.replace(/"/g, "'").replace(/\\/g, '/'));
}

function singleQuoted(attributes: string): string {
  return attributes.replace(/"([^"']*)"/g, "'$1'");
}

/** A value in as many tags as it needs: `Attributes`, `Attributes2`. */
function* pieces(name: string, value: string): Generator<[string, string]> {
  for (let at = 0; at * longestPiece < value.length; at++) {
    const piece = value.slice(at * longestPiece, (at + 1) * longestPiece);
    yield [at === 0 ? name : `${name}${at + 1}`, piece];
  }
}
