import { PassThrough } from 'node:stream';
import {
  type ClientCapabilities,
  createProtocolConnection,
  DidChangeTextDocumentNotification,
  DidOpenTextDocumentNotification,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  LogMessageNotification,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { findFiles } from '../../read/index.ts';
import { createWorkspace } from '../../workspace/index.ts';
import { uriOf } from '../addresses.ts';
import { serveLanguage } from '../index.ts';

/** What the editors of the tests can do unless a test says otherwise. */
const able: ClientCapabilities = {
  workspace: { workspaceEdit: { documentChanges: true } },
  textDocument: {
    publishDiagnostics: { relatedInformation: true },
    rename: { prepareSupport: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } },
  },
};

export type OpenSession = Awaited<ReturnType<typeof openSession>>;

/** A server in this process and an editor's end of the stream to it. */
export async function openSession({
  capabilities = able,
  root,
}: {
  readonly capabilities?: ClientCapabilities;
  readonly root?: string;
} = {}) {
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  const code = serveLanguage({
    input: toServer,
    output: toClient,
    host: {
      version: '0.0.0',
      readFiles: (folder) => findFiles(folder),
      openWorkspace: async () => createWorkspace(),
    },
  });
  const client = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  /** The findings that were published last, by address. */
  const found = new Map<string, PublishDiagnosticsParams>();
  const logged: string[] = [];
  const waiting = new Set<() => void>();
  client.onNotification(PublishDiagnosticsNotification.type, (params) => {
    found.set(params.uri, params);
    for (const look of waiting) look();
  });
  client.onNotification(LogMessageNotification.type, ({ message }) => {
    logged.push(message);
  });
  client.onUnhandledNotification(() => {});
  client.listen();
  const initialized = await client.sendRequest(InitializeRequest.type, {
    processId: process.pid,
    rootUri: null,
    capabilities,
    workspaceFolders: root === undefined ? null : [{ uri: uriOf(root), name: 'root' }],
  });
  await client.sendNotification(InitializedNotification.type, {});
  return {
    client,
    initialized,
    found,
    logged,
    code,
    open: (uri: string, text: string, version = 1) =>
      client.sendNotification(DidOpenTextDocumentNotification.type, {
        textDocument: { uri, languageId: 'markdown', version, text },
      }),
    /** Sends the whole text. */
    change: (uri: string, text: string, version: number) =>
      client.sendNotification(DidChangeTextDocumentNotification.type, {
        textDocument: { uri, version },
        contentChanges: [{ text }],
      }),
    /** Settles when findings of a version of a text have come; without a version, when any have. */
    findings: (uri: string, version?: number) =>
      new Promise<PublishDiagnosticsParams>((resolve) => {
        const look = () => {
          const params = found.get(uri);
          if (!params || (version !== undefined && params.version !== version)) return;
          waiting.delete(look);
          resolve(params);
        };
        waiting.add(look);
        look();
      }),
    async close() {
      await client.sendRequest(ShutdownRequest.type);
      await client.sendNotification(ExitNotification.type);
      const ended = await code;
      client.dispose();
      return ended;
    },
  };
}
