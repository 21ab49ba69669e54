import type { TextEdit, WorkspaceEdit } from 'vscode-languageserver-protocol';
import type { Fix } from '../diagnostics/index.ts';
import type { Desk } from './desk.ts';
import type { Session } from './session.ts';

/**
 * Changes to texts of a course as one edit of an editor. Each text comes with its version, so that an editor refuses
 * the edit if the text has changed since, where it takes that.
 */
export function editOf(fixes: readonly Fix[], desk: Desk, session: Session): WorkspaceEdit {
  const byFile = new Map<string, Fix[]>();
  for (const fix of fixes) {
    const there = byFile.get(fix.place.file);
    if (there) there.push(fix);
    else byFile.set(fix.place.file, [fix]);
  }
  const changed = [...byFile].map(([file, list]) => {
    const text = desk.text(file);
    const edits = apart(list).map(
      ({ place: { start, end }, text: newText }): TextEdit => ({
        range: session.places.toRange(text, start.offset, end.offset),
        newText,
      }),
    );
    return { text, edits };
  });
  if (session.capabilities.workspace?.workspaceEdit?.documentChanges === true) {
    return {
      documentChanges: changed.map(({ text: { uri, version }, edits }) => ({
        textDocument: { uri, version },
        edits,
      })),
    };
  }
  return { changes: Object.fromEntries(changed.map(({ text, edits }) => [text.uri, edits])) };
}

/** In the order of the text, none twice and none that overlaps an earlier one. */
function apart(fixes: readonly Fix[]): Fix[] {
  let end = -1;
  let last: Fix | undefined;
  return [...fixes]
    .sort((a, b) => a.place.start.offset - b.place.start.offset)
    .filter((fix) => {
      const { start } = fix.place;
      const isSame =
        last?.text === fix.text &&
        last.place.start.offset === start.offset &&
        last.place.end.offset === fix.place.end.offset;
      if (isSame || start.offset < end) return false;
      end = fix.place.end.offset;
      last = fix;
      return true;
    });
}
