import {
  ErrorCodes,
  LSPErrorCodes,
  type Position,
  type Range,
  ResponseError,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { isLabel } from '../../read/index.ts';
import type { Asked } from '../asked.ts';
import { nameAt, namesIn } from '../names.ts';
import { editOf } from '../workspace-edit.ts';

/** The name at a place, for an editor that asks before it renames; null where there is none. */
export function prepareRename(
  asked: Asked,
  position: Position,
): { range: Range; placeholder: string } | null {
  const course = asked.course();
  const there = course && nameAt(course, asked.desk, asked.file, asked.offsetOf(position));
  if (!there?.isExact) return null;
  const { start, end } = there.written;
  const range = asked.session.places.toRange(asked.open, start.offset, end.offset);
  return { range, placeholder: there.name };
}

/** Renames a position across the course: where it is named, and every use. */
export function rename(asked: Asked, position: Position, newName: string): WorkspaceEdit | null {
  const { desk, session, file } = asked;
  const course = asked.course();
  if (!course) return null;
  const name = nameAt(course, desk, file, asked.offsetOf(position))?.name;
  if (name === undefined) {
    throw new ResponseError(LSPErrorCodes.RequestFailed, 'No name of a position stands here.');
  }
  if (newName === name) return null;
  if (!isLabel(newName)) {
    throw new ResponseError(
      ErrorCodes.InvalidParams,
      `“${newName}” is no name: write letters and digits with - or _ between them, such as quiet-exchange.`,
    );
  }
  const names = namesIn(course, desk);
  if (names.some((one) => one.isGiven && one.name === newName)) {
    throw new ResponseError(
      ErrorCodes.InvalidParams,
      `Another position of the course is named ${newName} already.`,
    );
  }
  const meant = names.filter((one) => one.name === name);
  const hidden = meant.find((one) => !one.isExact);
  if (hidden) {
    const { file: there, start } = hidden.written;
    throw new ResponseError(
      LSPErrorCodes.RequestFailed,
      `${there}:${start.line} uses ${name} in a way that cannot be changed from here. Change it there by hand first.`,
    );
  }
  return editOf(
    meant.map(({ written }) => ({ place: written, text: newName })),
    desk,
    session,
  );
}
