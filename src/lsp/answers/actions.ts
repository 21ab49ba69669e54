import {
  type CodeAction,
  type CodeActionContext,
  CodeActionKind,
  type Range,
} from 'vscode-languageserver-protocol';
import type { Diagnostic, Fix } from '../../diagnostics/index.ts';
import { type Chapter, standsAt } from '../../model/index.ts';
import type { Asked } from '../asked.ts';
import { toClient } from '../to-client.ts';
import { editOf } from '../workspace-edit.ts';

const fixAll = `${CodeActionKind.SourceFixAll}.linewright`;

export const actionKinds = [CodeActionKind.QuickFix, fixAll];

/** What mends the findings of a stretch of a text, and all of them in it. */
export function actions(asked: Asked, range: Range, { only }: CodeActionContext): CodeAction[] {
  const { desk, session, file } = asked;
  const isWanted = (kind: string) =>
    only === undefined || only.some((one) => kind === one || kind.startsWith(`${one}.`));
  const inFile = desk.diagnostics().filter(({ place }) => place.file === file);
  const [from, to] = [asked.offsetOf(range.start), asked.offsetOf(range.end)];
  const found: CodeAction[] = [];
  if (isWanted(CodeActionKind.QuickFix)) {
    for (const diagnostic of inFile) {
      const { start, end } = diagnostic.place;
      if (end.offset < from || start.offset > to) continue;
      for (const { title, fixes, isPreferred } of mends(diagnostic, asked)) {
        found.push({
          title,
          kind: CodeActionKind.QuickFix,
          diagnostics: [toClient(diagnostic, desk, session)],
          edit: editOf(fixes, desk, session),
          ...(isPreferred && { isPreferred }),
        });
      }
    }
  }
  const all = inFile.flatMap(({ fixes = [] }) => fixes);
  if (all.length > 0 && isWanted(fixAll)) {
    const edit = editOf(all, desk, session);
    found.push({ title: 'Make all safe repairs in this file', kind: fixAll, edit });
  }
  return found;
}

interface Mend {
  readonly title: string;
  readonly fixes: readonly Fix[];
  readonly isPreferred?: true;
}

/** The safe repair of a finding, and the moves that were probably meant. */
function mends(diagnostic: Diagnostic, asked: Asked): Mend[] {
  const { fixes = [], place } = diagnostic;
  const found: Mend[] = [];
  if (fixes.length > 0) {
    const title = fixes.map((fix) => titleOf(fix, asked)).join(', ');
    found.push({ title: sentence(title), fixes, isPreferred: true });
  }
  if (diagnostic.rule === 'move-illegal' || diagnostic.rule === 'move-ambiguous') {
    const chapter = asked.chapter();
    for (const san of chapter ? meantAt(chapter, place.start.offset) : []) {
      found.push({ title: `Play ${san} instead`, fixes: [{ place, text: san }] });
    }
  }
  const near = /^Did you mean `([^`]+)`\?/.exec(diagnostic.hint ?? '')?.[1];
  const written = asked.text.slice(place.start.offset, place.end.offset);
  if (fixes.length === 0 && near !== undefined && /^[\p{L}\p{N}_.-]+$/u.test(written)) {
    found.push({ title: `Write ${near}`, fixes: [{ place, text: near }] });
  }
  return found;
}

function meantAt(chapter: Chapter, offset: number): readonly string[] {
  const here = standsAt(chapter, offset);
  const fault = here?.kind === 'move' ? here.node.fault : undefined;
  return fault && 'meant' in fault ? fault.meant : [];
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

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
