import { isMate, isStalemate, sideToMove } from '../../chess/index.ts';
import type { Score } from '../../facts/index.ts';
import { glyphMeaning, glyphSign, isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { engineOf, lineText, scoreText } from '../engine/engine-words.ts';
import { after } from '../shared/words.ts';

/**
 * What an engine may count, in pawns for the side that the sign speaks for, without contradicting it. There is no
 * standard: the PGN standard, section 10, gives signs a meaning and no number, and engines count in measures of
 * their own. So the bands are wide, overlap, and are common practice, no source.
 */
const bands = {
  equal: [-1, 1],
  unclear: [-2.5, 2.5],
  slight: [-0.5, 2],
  moderate: [0, 4],
  decisive: [1, Number.POSITIVE_INFINITY],
} as const;

export const engineVerdict = defineCourseRule({
  id: 'engine-verdict',
  severity: 'warning',
  byEngine: true,
  finds: 'An assessment sign that an engine contradicts.',
  documentation: `
What an engine says of the course comes from \`linewright engine\`; without its results this rule is
silent. The PGN standard (section 10) gives the assessment signs a meaning and no number, and there is no
other standard: each engine counts in a measure of its own, and of one of the strongest its makers say that
+1.00 is a win in every second of its long games against itself. So a sign is contradicted only by a number
that is of the other side, or far off:

| sign | contradicted outside of |
| --- | --- |
| \`=\` | -1.00 to +1.00 |
| \`∞\` | -2.50 to +2.50 |
| \`⩲\` and, for Black, \`⩱\` | -0.50 to +2.00 |
| \`±\` and \`∓\` | 0.00 to +4.00 |
| \`+-\` and \`-+\` | +1.00 and more |

The numbers are pawns for the side that the sign speaks for; a forced mate is more than any of them.

Look at the line that the engine gives. A verdict for people may differ: a drawn fortress, a position that
nobody holds at the board. Then say so and except the line.
`,
  examples: [
    {
      title: 'The sign speaks for the wrong side',
      course: '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7+ +-\n```',
      engine: { '1. e4 e5 2. Qh5 Nc6 3. Qxf7+': '+7.40 Kxf7 d4' },
      findings: [
        {
          at: '2:24-2:29',
          message:
            'After 3.Qxf7+ the sign +- says “White has a decisive advantage”, but Example 1 at depth 20 counts -7.40 for White.',
          hint: 'Its line is 3...Kxf7 4.d4. Change the sign, or except it with `:allow[engine-verdict …]` and the reason.',
        },
      ],
    },
    {
      title: 'Equal it is not',
      course: '```moves\n1. f3 e5 2. g4 =\n```',
      side: 'black',
      engine: { '1. f3 e5 2. g4': '#1 Qh4#' },
      findings: [
        {
          at: '2:13-2:15',
          message:
            'After 2.g4 the sign = says “equal position”, but Example 1 at depth 20 counts mated in 1 for White.',
        },
      ],
    },
    {
      title: 'Signs are wide',
      course:
        '```moves\n1. e4 e5 2. Nf3 (2. f4 exf4 ∞) 2... Nc6 (2... d6 ⩲) 3. Bb5 (3. d4 exd4 =) 3... a6 ±\n```',
      engine: {
        '1. e4 e5 2. Nf3 d6': '+0.90 d4',
        '1. e4 e5 2. f4 exf4': '-0.95 Nf3',
        '1. e4 e5 2. Nf3 Nc6 3. d4 exd4': '+0.40 Nxd4',
        '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6': '+0.30 Ba4',
      },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    if (!course.ask('engineRan', '')) return;
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const nag = node.glyphs.findLast(isAssessment);
        const { position } = node;
        if (nag === undefined || !position || isMate(position) || isStalemate(position)) continue;
        const fact = course.ask('engine', position.key);
        const best = fact?.lines[0];
        if (!fact || !best) continue;
        const { side, band } = meaningOf(nag);
        const score = forSide(best.score, side === sideToMove(position));
        if (isWithin(score, band)) continue;
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        const sign = glyphSign(nag) ?? `$${nag}`;
        yield {
          place: placeOf(node, block),
          message: `${after(node, parent)} the sign ${sign} says “${glyphMeaning(nag)}”, but ${engineOf(fact)} counts ${scoreText(score)} for ${side === 'white' ? 'White' : 'Black'}.`,
          hint: `Its line is ${lineText(position, best)}. Change the sign, or except it with \`:allow[engine-verdict …]\` and the reason.`,
        };
      }
    }
  },
});

/** Glyphs 10 to 13 speak for nobody; of the others the even ones for White (PGN standard, section 10). */
function meaningOf(nag: number) {
  const side = nag <= 13 || nag % 2 === 0 ? 'white' : 'black';
  if (nag <= 12) return { side, band: bands.equal } as const;
  if (nag === 13) return { side, band: bands.unclear } as const;
  const grade = (['slight', 'moderate', 'decisive', 'decisive'] as const)[(nag - 14) >> 1];
  return { side, band: bands[grade ?? 'decisive'] } as const;
}

function forSide(score: Score, isToMove: boolean): Score {
  if (isToMove) return score;
  return score.kind === 'mate'
    ? { kind: 'mate', moves: -score.moves }
    : { kind: 'pawns', hundredths: score.hundredths === 0 ? 0 : -score.hundredths };
}

function isWithin(score: Score, [low, high]: readonly [number, number]): boolean {
  if (score.kind === 'mate') return score.moves > 0 && high === Number.POSITIVE_INFINITY;
  return score.hundredths >= low * 100 && score.hundredths <= high * 100;
}
