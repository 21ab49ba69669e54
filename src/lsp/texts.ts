import {
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidChangeWorkspaceFoldersNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  DidSaveTextDocumentNotification,
  type ProtocolConnection,
} from 'vscode-languageserver-protocol';
import { pathOf } from './addresses.ts';
import { findCourses } from './find-courses.ts';
import type { Session } from './session.ts';

export function registerTexts(connection: ProtocolConnection, session: Session): void {
  connection.onNotification(DidOpenTextDocumentNotification.type, ({ textDocument }) => {
    session.open(textDocument.uri, textDocument.version, textDocument.text);
  });
  connection.onNotification(
    DidChangeTextDocumentNotification.type,
    ({ textDocument: { uri, version }, contentChanges }) =>
      session.change(uri, version, contentChanges),
  );
  connection.onNotification(DidCloseTextDocumentNotification.type, ({ textDocument: { uri } }) =>
    session.close(uri),
  );
  connection.onNotification(DidSaveTextDocumentNotification.type, ({ textDocument: { uri } }) =>
    session.changedOnDisk([uri]),
  );
  connection.onNotification(DidChangeWatchedFilesNotification.type, ({ changes }) =>
    session.changedOnDisk(changes.map(({ uri }) => uri)),
  );
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, async ({ event }) => {
    for (const { uri } of event.added) {
      const folder = pathOf(uri);
      for (const course of folder === undefined ? [] : await findCourses(folder)) {
        session.openCourse(course);
      }
    }
  });
}
