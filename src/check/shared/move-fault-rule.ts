import { isMoveFault, type MoveFault, playMove } from '../../chess/index.ts';
import { type Chapter, type MoveNode, movesOf } from '../../model/index.ts';
import { inLettersOf, listLetters } from '../../read/index.ts';
import { type CourseRule, defineCourseRule } from '../course-rule.ts';
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
      for (const { block, tree, node, parent } of movesOf(chapter)) {
        // Games have a rule of their own.
        if (block.kind === 'game') continue;
        if (node.fault?.kind !== kind || !node.written) continue;
        const reason = reasonFor(chapter, node.fault);
        const hint = earlierHint(tree, node, parent) ?? hintFor(chapter, node, parent);
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

/** The reason, with the letters that this chapter is written in. */
function reasonFor({ pieces }: Chapter, { reason }: MoveFault): string {
  if (pieces === undefined) return reason;
  return reason.replace(
    'the English letters are K, Q, R, B and N',
    `with \`pieces: ${pieces}\` the letters are ${listLetters(pieces)}`,
  );
}

/** A variation that stands behind the answer to the move which it takes the place of. */
function earlierHint(
  tree: readonly MoveNode[],
  node: MoveNode,
  parent: MoveNode,
): string | undefined {
  const before = parent.parent === undefined ? undefined : tree[parent.parent];
  if (parent.children[0] === node.index || !before?.position || !node.written) return undefined;
  const played = playMove(before.position, node.written.san);
  if (isMoveFault(played)) return undefined;
  const name = moveName(parent, before);
  return `In place of ${name} it can be played: put the variation behind that move.`;
}

function hintFor(
  { pieces }: Chapter,
  { written, fault }: MoveNode,
  parent: MoveNode | undefined,
): string | undefined {
  const asWritten = inLettersOf(pieces, written?.san ?? '');
  if (parent?.position && asWritten !== written?.san) {
    // A letter with two meanings, as R in Spanish.
    const inEnglish = playMove(parent.position, asWritten);
    if (!isMoveFault(inEnglish)) {
      return `In English letters this would be a move, but with \`pieces: ${pieces}\` it is written ${inLettersOf(pieces, inEnglish.san)}.`;
    }
  }
  return meantHint(
    (fault && 'meant' in fault ? fault.meant : []).map((san) => inLettersOf(pieces, san)),
  );
}
