/** Claims that say what true sentences say: for `check --fix --claims`. */
import type { Fix } from '../../diagnostics/index.ts';
import type { Chapter, MoveNode } from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import type { CourseView } from '../view/index.ts';
import { judge, makeBudget } from './judge.ts';
import { vocabularyFor } from './languages/index.ts';
import { passagesOf } from './passages.ts';
import { statementsIn } from './statements.ts';
import { placeIn } from './text.ts';

/** So many characters in front of a claim are compared. */
const most = 12;

/** A claim to be put behind a sentence. */
export interface ClaimToAdd {
  readonly fix: Fix;
  /** What the file has in front of it: the sentence's last word. */
  readonly behind: string;
}

export function* claimsToAdd(chapter: Chapter, course: CourseView): Generator<ClaimToAdd> {
  const vocabulary = vocabularyFor(course.language);
  if (!vocabulary) return;
  const budget = makeBudget();
  const saidAt = new Map<MoveNode, Set<string>>();
  for (const passage of passagesOf(chapter, course)) {
    const { shown, text, takesClaims } = passage;
    if (!takesClaims || !shown?.node) continue;
    const said = saidAt.get(shown.node) ?? claimsOf(shown.node);
    saidAt.set(shown.node, said);
    const byEnd = new Map<number, string[]>();
    for (const statement of statementsIn(passage, vocabulary)) {
      const claim = judge(statement, passage, budget)?.here.claim;
      if (claim === undefined || said.has(claim)) continue;
      said.add(claim);
      byEnd.set(statement.sentenceEnd, [...(byEnd.get(statement.sentenceEnd) ?? []), claim]);
    }
    for (const [end, claims] of byEnd) {
      const place = placeIn(text, end, end);
      const claim = inLettersOf(chapter.pieces, claims.join(' and '));
      const fix = { place, text: ` :claim[${claim}]` };
      const behind = /\S*$/.exec(text.text.slice(Math.max(0, end - most), end))?.[0] ?? '';
      yield { fix, behind };
    }
  }
}

function claimsOf({ statements }: MoveNode): Set<string> {
  const claims = statements.filter(({ name }) => name === 'claim');
  return new Set(claims.flatMap(({ argument }) => argument.split(/\s+and\s+/)));
}
