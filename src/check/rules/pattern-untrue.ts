import type { Finding, Place } from '../../diagnostics/index.ts';
import { firstSign, type PatternBlock } from '../../model/index.ts';
import { chapterBudget, type SearchBudget } from '../claims/index.ts';
import { placesIn } from '../course-claims/claims-of.ts';
import { defineCourseRule } from '../course-rule.ts';
import { failuresAt, isMove, type PatternFailure } from '../shared/pattern-holds.ts';
import { type CourseView, type PatternPlace, patternAsked } from '../view/index.ts';

export const patternUntrue = defineCourseRule({
  id: 'pattern-untrue',
  severity: 'error',
  finds: 'Advice or a claim of a pattern that does not hold in one of its positions.',
  documentation: `
What a pattern says under \`advice\` and \`claim\` holds in every position of the course's \`moves\` blocks that
has it, except in those whose names stand under \`except\`.

- A **claim** must be true in each of these positions. Where the pattern stands with the colours exchanged, the
  claim is judged with the colours exchanged.
- **Advice** is one move, or several of which any will do. It is looked at where the course's side is to move
  and the pattern stands as it is written. If the course advises a move there, it must be one of them; if not,
  one of them must be legal. In a course for both sides the side at the bottom of the pattern's board is meant.

A finding names the first position where it fails, and says in how many others it fails too.
`,
  examples: [
    {
      title: 'A claim that is not true everywhere',
      course:
        '```moves\n1. e4 d5 2. exd5 Qxd5 3. d4 Nf6 4. c4\n```\n\n```pattern\ntitle: No pawn on the e-file\nwhite: d4\nempty: e2 e3 e4 e5\nclaim: isolated d4\n```',
      findings: [
        {
          at: '9:8-9:19',
          message:
            '`isolated d4` is false after 3.d4, where this pattern stands: the white pawn on c2 stands beside its file. It fails in 2 more of its 3 positions.',
          hint: 'Correct the claim, place more pieces in the pattern, or list the name of that position under `except`.',
        },
      ],
    },
    {
      title: 'The course advises another move there',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. cxd5 exd5 5. Bg5\n```\n\n```pattern\ntitle: The exchange\nwhite: d4\nblack: d5 Nf6\nempty: c4 e6\nadvice: Bf4\n```',
      findings: [
        {
          at: '10:9-10:12',
          message:
            'Bf4 is not the advice after 4...exd5, where this pattern stands: there the course advises 5.Bg5.',
          hint: 'Correct the advice, place more pieces in the pattern, or list the name of that position under `except`.',
        },
      ],
    },
    {
      title: 'Where the course advises nothing, the move must be legal',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. cxd5 exd5 4. a3 h6 =\n```\n\n```pattern\ntitle: The exchange\nwhite: d4\nblack: d5 h6\nempty: c4 e6\nadvice: Nf4\n```',
      findings: [
        {
          at: '10:9',
          message:
            "Nf4 cannot be played after 4...h6, where this pattern stands: no knight of White's can reach f4.",
        },
      ],
    },
    {
      title: 'No move at all',
      course: '```pattern\ntitle: King pawn\nwhite: e4\nadvice: Zf3\n```',
      findings: [{ at: '4:9-4:12', message: '`Zf3` is no move.' }],
    },
    {
      title: 'True everywhere but where the author says so',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. cxd5 exd5 {:here[early]} 5. Bg5\n  ( 5. Bf4 {:option[quieter]} )\n5... Be7 6. e3 c6 7. Bd3\n```\n\n```pattern\ntitle: The exchange\nwhite: d4 Bg5\nblack: d5\nempty: c4 e6\nadvice: Bd3 e3\nclaim: half-open c white and half-open e black\n```\n\n```pattern\ntitle: With colours exchanged too\nwhite: d4\nblack: d5\nempty: c4 e6\nreversed: true\nclaim: not isolated d5\n```\n\n```pattern\ntitle: The bishop comes out\nwhite: d4 Bc1\nblack: d5 Nf6\nempty: c4 e6\nadvice: Bf4\nexcept: early\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const budget = { search: { left: chapterBudget }, judged: mostJudged };
    for (const block of chapter.blocks) {
      if (block.kind !== 'pattern') continue;
      yield* noMoves(block);
      if (block.advice.length > 0 || block.claims.length > 0) yield* untrue(block, course, budget);
    }
  },
});

/**
 * How often something that a pattern says is judged in one chapter: ten patterns that say five things, each in a
 * thousand positions, are some seconds. It is a chapter's, as all limits are.
 */
const mostJudged = 50_000;

interface Budget {
  readonly search: SearchBudget;
  judged: number;
}

function* noMoves({ advice }: PatternBlock): Generator<Finding> {
  for (const { san, place } of advice) {
    if (isMove(san)) continue;
    yield {
      place,
      message: `\`${san}\` is no move.`,
      hint: 'Write the move as in a block, without a number: `Nf3`, `exd5`, `O-O`.',
    };
  }
}

/** One finding for each thing that is said, at the first position where it is not so. */
function* untrue(block: PatternBlock, course: CourseView, budget: Budget): Generator<Finding> {
  const except = new Set(block.except.map(({ name }) => course.ask('name', name)?.key));
  const places = (course.ask('matches', patternAsked(block)) ?? []).filter(
    ({ key }) => !except.has(key),
  );
  budget.judged -= places.length * (block.advice.length + block.claims.length);
  if (budget.judged < 0) {
    yield {
      place: firstSign(block.place),
      message: `What this pattern says is not checked: with the patterns before it, it would be judged more than ${mostJudged.toLocaleString('en')} times.`,
      hint: 'Place more pieces in the patterns, let them say less, or divide the chapter.',
    };
    return;
  }
  const failed = new Map<string, { at: PatternPlace; failure: PatternFailure; more: number }>();
  for (const at of places) {
    for (const failure of failuresAt(block, at, course, budget.search)) {
      const what = whatFails(failure);
      const known = failed.get(what);
      if (known) known.more++;
      else failed.set(what, { at, failure, more: 0 });
    }
  }
  for (const { at, failure, more } of failed.values()) {
    yield describe(failure, { at, more, all: places.length }, course);
  }
}

function whatFails(failure: PatternFailure): string {
  if (failure.says === 'advice') return 'advice';
  return `${failure.claim.place.start.offset} ${failure.part.offset}`;
}

interface Extent {
  readonly at: PatternPlace;
  readonly more: number;
  readonly all: number;
}

function describe(failure: PatternFailure, { at, more, all }: Extent, course: CourseView): Finding {
  const there = course.ask('positionPlace', at.key);
  const others = more === 0 ? '' : ` It fails in ${more} more of its ${all} positions.`;
  return {
    place: placeOf(failure),
    message: `${sentence(failure, whereIs(at))}${others}`,
    hint: `Correct the ${failure.says}, place more pieces in the pattern, or list the name of that position under \`except\`.`,
    ...(there ? { related: [{ place: there, message: 'the pattern stands here' }] } : {}),
  };
}

function whereIs({ name, reversed }: PatternPlace): string {
  const after = name === '' ? 'at the start of a block' : `after ${name}`;
  return `${after}, where this pattern stands${reversed ? ' with the colours exchanged (as they are in what follows)' : ''}`;
}

function placeOf(failure: PatternFailure): Place {
  if (failure.says === 'advice') return failure.advice.place;
  const { offset, length } = failure.part;
  return placesIn(failure.claim)(offset, length);
}

function sentence(failure: PatternFailure, where: string): string {
  if (failure.says === 'claim') {
    const { part, undecided, because } = failure;
    const verdict = undecided ? 'could not be decided' : 'is false';
    return `\`${part.text}\` ${verdict} ${where}: ${because}.`;
  }
  const { advice, instead, because } = failure;
  return instead
    ? `${advice.san} is not the advice ${where}: there the course advises ${instead.name}.`
    : `${advice.san} cannot be played ${where}: ${because()}.`;
}
