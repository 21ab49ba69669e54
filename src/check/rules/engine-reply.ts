import { isMoveFault, type Position, playMove, sideToMove } from '../../chess/index.ts';
import { type EngineFact, inPawns, type Score, scoreOfMove } from '../../facts/index.ts';
import { taughtNodes } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { lineText, lossOf, nameOfMove, pawnsText, scoreText } from '../engine/engine-words.ts';
import { countsText } from '../engine/judge-move.ts';
import { moveName } from '../shared/move-name.ts';
import type { CourseView } from '../view/index.ts';

/** In pawns: who is so far behind troubles nobody with the best of his moves. */
const lost = -2;

export const engineReply = defineCourseRule({
  id: 'engine-reply',
  severity: 'warning',
  byEngine: true,
  finds: 'A reply that an engine counts much better than all that the course covers.',
  documentation: `
What an engine says of the course comes from \`linewright engine\`; without its results this rule is
silent. Where a course covers replies and leaves out the one that troubles its side most, its picture of
the position is too good. Such a reply is told when it is better than every covered one by more than the
setting \`reply\`, 0.8 pawns unless \`course.yaml\` says otherwise. Where the course ends, or where even
the best reply is two pawns down, nothing is told.

\`linewright gaps\` lists the replies that are as good as the covered ones, too.
`,
  examples: [
    {
      title: 'The course covers the moves that do not hurt',
      course: '```moves\n1. e4 e5 2. Qh5 g6 (2... Ke7 3. Qxe5#) 3. Qxe5+ =\n```',
      engine: {
        '1. e4 e5 2. Qh5': '+0.40 Nc6 Bc4; +0.30 Nf6',
        '1. e4 e5 2. Qh5 g6': '+3.10 Qxe5+',
        '1. e4 e5 2. Qh5 Ke7': '#1 Qxe5#',
      },
      findings: [
        {
          at: '2:13-2:16',
          message:
            'After 2.Qh5 the course does not cover 2...Nc6, more than 0.8 pawns better than all that it covers: for Black, Example 1 at depth 20 counts +0.40 against -3.10 for 2...g6.',
          hint: 'Cover 2...Nc6 3.Bc4, or except it with `:allow[engine-reply …]` and the reason.',
        },
      ],
    },
    {
      title: 'As good as the best that is covered, or covered in another chapter',
      course: {
        'chapters/1.md':
          '---\ntitle: One\n---\n```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n\n```moves\n1. e4 c5 2. Nf3\n```',
        'chapters/2.md': '---\ntitle: Two\n---\n```moves\n1. e4 e6 2. d4\n```',
      },
      engine: {
        '1. e4': '-0.10 e6; -0.15 c5; -0.70 e5',
        '1. e4 e5 2. Nf3': '-0.30 Nf6; -0.32 Nc6',
      },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const { side, margins } = course;
    if (side === 'both' || !course.ask('engineRan', '')) return;
    const told = new Set<string>();
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of taughtNodes(block, side)) {
        const { position } = node;
        if (!position || sideToMove(position) === side || node.children.length === 0) continue;
        if (told.has(position.key)) continue;
        const here = course.ask('engine', position.key);
        const best = here?.lines[0];
        if (!here || !best) continue;
        // Of a side that is lost no reply is strong.
        if (inPawns(best.score) < lost) continue;
        const covered = course.ask('covered', position.key);
        if (covered.includes(best.moves[0] ?? '')) continue;
        const known = bestCovered(course, position, here);
        if (!known || lossOf(best.score, known.score) <= margins.reply) continue;
        told.add(position.key);
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        const reply = nameOfMove(position, best.moves[0] ?? '');
        const where = node.written ? `After ${moveName(node, parent)}` : 'In the first position';
        yield {
          place: placeOf(node, block),
          message: `${where} the course does not cover ${reply}, more than ${pawnsText(margins.reply)} better than all that it covers: ${countsText(position, here)} ${scoreText(best.score)} against ${scoreText(known.score)} for ${nameOfMove(position, known.san)}.`,
          hint: `Cover ${lineText(position, best)}, or except it with \`:allow[engine-reply …]\` and the reason.`,
        };
      }
    }
  },
});

/**
 * The best of the replies that the course covers, in whatever block; a reply that the engine has not looked at is
 * taken for as good as the last of its list, so that nothing is told on account of it.
 */
function bestCovered(course: CourseView, position: Position, here: EngineFact) {
  return course
    .ask('covered', position.key)
    .flatMap((san) => {
      const played = playMove(position, san);
      if (isMoveFault(played)) return [];
      const after = course.ask('engine', played.after.key);
      const score = scoreOfMove({ san, to: played.after }, { here, after });
      const bound = score ?? here.lines.at(-1)?.score;
      return bound ? [{ san, score: bound }] : [];
    })
    .reduce<{ san: string; score: Score } | undefined>(
      (a, b) => (a && lossOf(b.score, a.score) <= 0 ? a : b),
      undefined,
    );
}
