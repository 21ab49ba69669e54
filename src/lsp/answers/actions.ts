import {
  type CodeAction,
  type CodeActionContext,
  CodeActionKind,
  type Range,
} from 'vscode-languageserver-protocol';
import { claimFixes } from '../../check/index.ts';
import type { Fix } from '../../diagnostics/index.ts';
import type { Asked } from '../asked.ts';
import { textOf } from '../open-text.ts';
import { toClient } from '../to-client.ts';
import { editOf } from '../workspace-edit.ts';
import { mends } from './mends.ts';

const fixAll = `${CodeActionKind.SourceFixAll}.linewright`;
const addClaims = `${CodeActionKind.Source}.claims.linewright`;

export const actionKinds = [CodeActionKind.QuickFix, fixAll, addClaims];

/** What mends the findings of a stretch of a text, all of them in it, and claims for its sentences. */
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
  const offer = (title: string, kind: string, fixes: readonly Fix[]) => {
    if (fixes.length > 0) found.push({ title, kind, edit: editOf(fixes, desk, session) });
  };
  if (isWanted(fixAll)) {
    const fixes = inFile.flatMap((one) => one.fixes ?? []);
    offer('Make all safe repairs in this file', fixAll, fixes);
  }
  // Reads every sentence of the course: too slow for every move of the cursor.
  if (only !== undefined && isWanted(addClaims)) {
    offer('Add claims behind the sentences that they prove', addClaims, claimsFor(asked));
  }
  return found;
}

function claimsFor({ course: current, desk, file }: Asked): Fix[] {
  const course = current();
  if (!course) return [];
  const fixes = claimFixes(course, (name) => textOf(desk.text(name)));
  return fixes.filter(({ place }) => place.file === file);
}
