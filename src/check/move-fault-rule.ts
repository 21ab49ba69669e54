import type { MoveFault } from '../chess/index.ts';
import { movesOf } from '../model/index.ts';
import { type CourseRule, defineCourseRule } from './course-rule.ts';
import { moveName } from './move-name.ts';

/**
 * The rules for moves that cannot be played differ only in the kind of fault and in what they
 * tell the author; no setting can switch them off.
 */
export function makeMoveFaultRule(
  kind: MoveFault['kind'],
  rule: Pick<CourseRule, 'id' | 'finds' | 'documentation' | 'examples'>,
): CourseRule {
  return defineCourseRule({
    ...rule,
    severity: 'error',
    always: true,
    *inChapter({ chapter }) {
      for (const { block, node, parent } of movesOf(chapter)) {
        // Games have a rule of their own.
        if (block.kind === 'game') continue;
        if (node.fault?.kind !== kind || !node.written) continue;
        const { reason, meant } = node.fault;
        const hint = meantHint(meant);
        yield {
          place: node.written.place,
          message: `${moveName(node, parent)} ${verb[kind]}: ${reason}.`,
          ...(hint === undefined ? {} : { hint }),
        };
      }
    },
  });
}

const verb: Readonly<Record<MoveFault['kind'], string>> = {
  illegal: 'cannot be played',
  ambiguous: 'is not one move',
  unreadable: 'is no move',
};

/** What was probably meant, as a question. */
export function meantHint(meant: readonly string[]): string | undefined {
  if (meant.length === 0) return undefined;
  return `Did you mean ${meant.join(', ').replace(/, ([^,]*)$/, ' or $1')}?`;
}
