import type { Finding } from '../../diagnostics/index.ts';
import type { CourseProblem } from '../../model/index.ts';

/** What the reader and the model could not make sense of, as the findings of one rule. */
export function problemsOf(
  id: CourseProblem['rule'],
  { problems }: { readonly problems: readonly CourseProblem[] },
): Finding[] {
  return problems.flatMap(({ rule, ...problem }) => (rule === id ? [problem] : []));
}
