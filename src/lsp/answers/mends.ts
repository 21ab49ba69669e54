import { rules } from '../../check/index.ts';
import type { Diagnostic, Fix } from '../../diagnostics/index.ts';
import { EditRefusedError, type NewDirective, sayAt } from '../../edit/index.ts';
import { documentsOf, standsAt } from '../../model/index.ts';
import { inLettersOf } from '../../read/index.ts';
import type { Asked } from '../asked.ts';

/** What mends a finding, with what it does in a few words. */
export interface Mend {
  readonly title: string;
  readonly fixes: readonly Fix[];
  /** Whether it is safe: it changes no more than how something is written. */
  readonly isPreferred?: true;
}

/** The safe repair of a finding, what was probably meant, and what may be said to the check instead. */
export function mends(diagnostic: Diagnostic, asked: Asked): Mend[] {
  const { fixes = [], place, hint = '' } = diagnostic;
  const found: Mend[] = [];
  if (fixes.length > 0) {
    const title = fixes.map((fix) => titleOf(fix, asked)).join(', ');
    found.push({ title: title.charAt(0).toUpperCase() + title.slice(1), fixes, isPreferred: true });
  }
  const chapter = asked.chapter();
  const here = chapter && standsAt(chapter, place.start.offset);
  const node = here?.kind === 'move' ? here.node : undefined;
  if (node?.fault && 'meant' in node.fault && diagnostic.rule.startsWith('move-')) {
    for (const meant of node.fault.meant) {
      const san = inLettersOf(chapter?.pieces, meant);
      found.push({ title: `Play ${san} instead`, fixes: [{ place, text: san }] });
    }
  }
  const written = asked.text.slice(place.start.offset, place.end.offset);
  const near = /^Did you mean `([^`]+)`\?/.exec(hint)?.[1];
  if (fixes.length === 0 && near !== undefined && /^[\p{L}\p{N}_./#-]+$/u.test(written)) {
    found.push({ title: `Write ${near}`, fixes: [{ place, text: near }] });
  }
  const true_ = /^Here `([^`:]+)` is true\.$/.exec(hint)?.[1];
  if (diagnostic.rule === 'claim-false' && true_ !== undefined) {
    found.push({ title: `Claim ${true_}, which is true`, fixes: [{ place, text: true_ }] });
  }
  return [...found, ...said(diagnostic, asked)];
}

/** What may be said behind the move of a finding: that it is so on purpose. */
function said(diagnostic: Diagnostic, asked: Asked): Mend[] {
  const chapter = asked.chapter();
  const course = asked.course();
  const here = chapter && standsAt(chapter, diagnostic.place.start.offset);
  if (!chapter || !course || here?.kind !== 'move' || !here.ref) return [];
  const { ref, node } = here;
  const found: Mend[] = [];
  const say = (title: string, directive: NewDirective, isOnLine = false) => {
    try {
      const fixes = sayAt({ chapter, text: asked.text }, ref, { directives: [directive] });
      // `:allow` is heard on the line of the finding alone.
      const { line } = diagnostic.place.start;
      if (isOnLine && fixes.some(({ place }) => place.start.line !== line)) return;
      found.push({ title, fixes });
    } catch (error) {
      if (!(error instanceof EditRefusedError)) throw error;
    }
  };
  if (diagnostic.rule === 'reply-unanswered') {
    say('Say that the line stops here', { name: 'end', argument: 'beyond this course' });
  }
  if (diagnostic.rule === 'transposition-untold') {
    const names = documentsOf(course).flatMap((one) => one.names);
    for (const { name, position } of names) {
      if (position === undefined || position.key !== node.position?.key) continue;
      say(`Say that this is ${name}`, { name: 'same', argument: name });
    }
  }
  if (rules.some(({ id, always }) => id === diagnostic.rule && !always)) {
    const argument = `${diagnostic.rule} on purpose`;
    say(`Allow ${diagnostic.rule} here`, { name: 'allow', argument }, true);
  }
  return found;
}

/** What a repair does, in a few words; what it touches is quoted, on one line. */
function titleOf({ place, text }: Fix, { desk }: Asked): string {
  const before = desk.textAt(place);
  if (before === '') return `put in ${quoted(text)}`;
  return text === ''
    ? `take out ${quoted(before)}`
    : `write ${quoted(text)} instead of ${quoted(before)}`;
}

function quoted(text: string): string {
  const line = text.trim().replace(/\s+/g, ' ');
  return `“${line.length > 40 ? `${line.slice(0, 39)}…` : line}”`;
}
