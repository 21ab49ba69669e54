import {
  type CancellationToken,
  LSPErrorCodes,
  type Position,
  ResponseError,
} from 'vscode-languageserver-protocol';
import type { Chapter, Course } from '../model/index.ts';
import type { Desk } from './desk.ts';
import { type OpenText, textOf } from './open-text.ts';
import type { Session } from './session.ts';

/** A question about a text that is open, and what it is asked of. */
export interface Asked {
  readonly session: Session;
  readonly desk: Desk;
  readonly file: string;
  readonly open: OpenText;
  /** Without a byte order mark: what offsets count in. */
  readonly text: string;
  readonly course: () => Course | undefined;
  readonly chapter: () => Chapter | undefined;
  readonly offsetOf: (position: Position) => number;
}

/**
 * Takes up a question. Lets what the client has sent meanwhile come in first: it may have cancelled it, or changed
 * the text, to which the answer would no longer fit.
 * @returns undefined for a text that is not open, or stands in no course.
 */
export async function takeUp(
  session: Session,
  uri: string,
  token: CancellationToken,
): Promise<Asked | undefined> {
  const before = session.text(uri);
  const there = before && session.at(uri);
  if (!there) return undefined;
  const { desk, file } = there;
  await desk.ready();
  await new Promise((resolve) => setImmediate(resolve));
  if (token.isCancellationRequested) {
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'Cancelled.');
  }
  const open = session.text(uri);
  if (!open || open !== before) {
    throw new ResponseError(LSPErrorCodes.ContentModified, 'The text has changed since.');
  }
  return {
    session,
    desk,
    file,
    open,
    text: textOf(open),
    course: () => desk.course(),
    chapter: () => desk.chapter(file),
    offsetOf: (position) => session.places.toOffset(open, position),
  };
}
