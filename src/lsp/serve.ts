import {
  createProtocolConnection,
  ExitNotification,
  InitializedNotification,
  type InitializeParams,
  InitializeRequest,
  LogMessageNotification,
  MessageType,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  RegistrationRequest,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { pathOf } from './addresses.ts';
import { capabilitiesFor } from './capabilities.ts';
import type { Host } from './desk.ts';
import { findCourses } from './find-courses.ts';
import { cancelling, createGate } from './gate.ts';
import { chooseEncoding } from './open-text.ts';
import { registerRequests } from './requests.ts';
import { explain, Session } from './session.ts';
import { registerTexts } from './texts.ts';

export interface ServeOptions {
  readonly input: NodeJS.ReadableStream;
  readonly output: NodeJS.WritableStream;
  readonly host: Host;
}

/** Milliseconds between looks whether the editor is still there. */
const pace = 5000;

/**
 * Serves one editor until it ends the session, goes away or closes the stream.
 * @returns the exit code that the protocol asks for: 0 behind `shutdown`, else 1.
 */
export function serveLanguage({ input, output, host }: ServeOptions): Promise<number> {
  return new Promise((resolve) => {
    const reader = new StreamMessageReader(input);
    const writer = new StreamMessageWriter(output);
    const gate = createGate((response) => void writer.write(response));
    const connection = createProtocolConnection(reader, writer, undefined, {
      connectionStrategy: cancelling,
      messageStrategy: gate.strategy,
    });
    let session: Session | undefined;
    let watching: NodeJS.Timeout | undefined;
    let isOver = false;
    const end = () => {
      if (isOver) return;
      isOver = true;
      clearInterval(watching);
      session?.end();
      connection.dispose();
      resolve(gate.stage() === 'shut down' ? 0 : 1);
    };
    const log = (message: string, isFault = false) => {
      const type = isFault ? MessageType.Error : MessageType.Log;
      if (!isOver) void connection.sendNotification(LogMessageNotification.type, { type, message });
    };

    connection.onRequest(InitializeRequest.type, (params) => {
      const encoding = chooseEncoding(params.capabilities.general?.positionEncodings);
      session = new Session(
        host,
        {
          log,
          publish: (found) => {
            if (!isOver)
              void connection.sendNotification(PublishDiagnosticsNotification.type, found);
          },
        },
        { capabilities: params.capabilities, encoding },
      );
      registerTexts(connection, session);
      registerRequests(connection, session, log);
      watching = watchParent(params.processId, end);
      connection.onNotification(InitializedNotification.type, () => {
        begin(params, connection, session).catch((error: unknown) => log(explain(error), true));
      });
      return {
        capabilities: capabilitiesFor(params.capabilities, encoding),
        serverInfo: { name: 'linewright', version: host.version },
      };
    });
    connection.onRequest(ShutdownRequest.type, () => {});
    connection.onNotification(ExitNotification.type, end);
    connection.onClose(end);
    // An unreadable message is the client's fault.
    connection.onError(([error]) => log(explain(error), true));
    input.on('end', end);
    input.on('close', end);
    output.on('error', end);
    connection.listen();
  });
}

/** Opens the courses of the client's folders, and subscribes to changes on the disk. */
async function begin(
  { capabilities, workspaceFolders, rootUri }: InitializeParams,
  connection: ProtocolConnection,
  session: Session | undefined,
): Promise<void> {
  if (capabilities.workspace?.didChangeWatchedFiles?.dynamicRegistration === true) {
    const patterns = [
      '**/course.yaml',
      '**/{chapters,pages,news}/*.md',
      '**/games/*.pgn',
      '**/facts/*.tsv',
      '**/translations/*/origin.json',
      '**/media/**',
    ];
    await connection.sendRequest(RegistrationRequest.type, {
      registrations: [
        {
          id: 'files',
          method: 'workspace/didChangeWatchedFiles',
          registerOptions: { watchers: patterns.map((globPattern) => ({ globPattern })) },
        },
      ],
    });
  }
  const roots = workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []);
  for (const root of roots) {
    const folder = pathOf(root);
    for (const course of folder === undefined ? [] : await findCourses(folder)) {
      session?.openCourse(course);
    }
  }
}

/** Ends the server of an editor that has crashed. */
function watchParent(processId: number | null, end: () => void): NodeJS.Timeout | undefined {
  if (typeof processId !== 'number') return undefined;
  const timer = setInterval(() => {
    try {
      process.kill(processId, 0);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ESRCH') end();
    }
  }, pace);
  timer.unref();
  return timer;
}
