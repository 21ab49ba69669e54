import path from 'node:path';
import { PassThrough } from 'node:stream';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import {
  CompletionRequest,
  HoverRequest,
  InitializeRequest,
  LSPErrorCodes,
  type Message,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import { findFiles } from '../read/index.ts';
import { createWorkspace } from '../workspace/index.ts';
import { uriOf } from './addresses.ts';
import { serveLanguage } from './index.ts';
import { courseFolder, positionIn } from './testing/course-folder.ts';
import { openSession } from './testing/open-session.ts';

const text = '---\ntitle: One\n---\n\n```moves\n1. e4 e5 =\n```\n';
const settings = 'title: A\nid: a\nside: white\n';

/** A server and the bare messages that go to it and come back. */
function bare() {
  const input = new PassThrough();
  const output = new PassThrough();
  const code = serveLanguage({
    input,
    output,
    host: {
      version: '0.0.0',
      readFiles: (folder) => findFiles(folder),
      openWorkspace: async () => createWorkspace(),
    },
  });
  const answers: Message[] = [];
  new StreamMessageReader(output).listen((message) => answers.push(message));
  const writer = new StreamMessageWriter(input);
  return {
    code,
    answers,
    input,
    send: (message: object) => writer.write({ jsonrpc: '2.0', ...message } as Message),
  };
}

const begin = {
  id: 1,
  method: InitializeRequest.method,
  params: { processId: null, rootUri: null, capabilities: {} },
};

// LSP 3.17, sections "Lifecycle messages" and "exit".
test('nothing is answered before the beginning and behind the end; then the exit code is 0', async () => {
  const { code, answers, send } = bare();
  const codeOf = (id: number) => () =>
    answers.find((one) => 'id' in one && one.id === id) as { error?: { code: number } } | undefined;
  await send({ id: 0, method: HoverRequest.method, params: {} });
  await expect.poll(codeOf(0)).toMatchObject({ error: { code: -32002 } });
  await send({ method: 'textDocument/didOpen', params: {} });
  await send(begin);
  await expect.poll(codeOf(1)).toMatchObject({ result: { serverInfo: { name: 'linewright' } } });
  await send({ ...begin, id: 2 });
  await expect.poll(codeOf(2)).toMatchObject({ error: { code: -32600 } });
  await send({ id: 3, method: 'shutdown' });
  await expect.poll(codeOf(3)).toMatchObject({ result: null });
  await send({ id: 4, method: HoverRequest.method, params: {} });
  await expect.poll(codeOf(4)).toMatchObject({ error: { code: -32600 } });
  await send({ method: 'exit' });
  expect(await code).toBe(0);
});

test('an exit without a shutdown, and a stream that ends, end it with 1', async () => {
  const first = bare();
  await first.send({ method: 'exit' });
  expect(await first.code).toBe(1);
  const second = bare();
  await second.send(begin);
  second.input.end();
  expect(await second.code).toBe(1);
});

test('a request that is cancelled is answered, with that', async () => {
  const { answers, send, code } = bare();
  await send(begin);
  const params = { textDocument: { uri: 'file:///x.md' }, position: { line: 0, character: 0 } };
  // Three in one go: the last two are seen before the first is answered.
  void send({ id: 7, method: CompletionRequest.method, params });
  void send({ id: 8, method: CompletionRequest.method, params });
  void send({ method: '$/cancelRequest', params: { id: 8 } });
  await expect
    .poll(() => answers.find((one) => 'id' in one && one.id === 8))
    .toMatchObject({ error: { code: LSPErrorCodes.RequestCancelled } });
  await send({ method: 'exit' });
  await code;
});

test('bytes of UTF-8 where the editor would rather count them', async () => {
  const course = courseFolder({ 'course.yaml': settings, 'chapters/1.md': text });
  const session = await openSession({
    capabilities: { general: { positionEncodings: ['utf-8', 'utf-16'] } },
  });
  expect(session.initialized.capabilities.positionEncoding).toBe('utf-8');
  const uri = uriOf(path.join(course.folder, 'chapters/1.md'));
  // A letter of two units of UTF-16 and four bytes.
  await session.open(uri, text.replace('1. e4 e5', '{a𐐀b} 1. e4 e9'));
  const { diagnostics } = await session.findings(uri, 1);
  const [found] = diagnostics;
  expect(found?.range).toEqual({
    start: { line: 5, character: 15 },
    end: { line: 5, character: 17 },
  });
  await session.close();
  course.remove();
});

test('files of a folder that come and go, whether they are open or not', async () => {
  const course = courseFolder({ 'course.yaml': settings, 'chapters/1.md': text });
  const session = await openSession({ root: course.folder });
  const broken = uriOf(path.join(course.folder, 'chapters/2.md'));
  const tell = (type: 1 | 2 | 3) =>
    session.client.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: broken, type }],
    });
  course.write('chapters/2.md', text.replace('e5', 'e6 2. Ke3'));
  await tell(1);
  const codes = () => session.found.get(broken)?.diagnostics.map(({ code }) => code);
  await expect.poll(codes).toContain('move-illegal');
  course.remove('chapters/2.md');
  await tell(3);
  await expect.poll(codes).toEqual([]);
  // A mark of the byte order is a sign of the editor's text, and none of the course's.
  const uri = uriOf(path.join(course.folder, 'chapters/1.md'));
  const marked = `\uFEFF${text.replace('---\ntitle: One', '---\ntitle: One')}`;
  await session.open(uri, marked.replace('e5', 'e9'), 5);
  const { diagnostics } = await session.findings(uri, 5);
  expect(diagnostics[0]?.range.start).toEqual(positionIn(marked, 'e5'));
  await session.close();
  course.remove();
});

test('several courses in one folder, each by itself', async () => {
  const broken = text.replace('e5', 'e6 2. Ke3');
  const folder = courseFolder({
    'one/course.yaml': settings,
    'one/chapters/1.md': broken,
    'deep/two/course.yaml': settings,
    'deep/two/chapters/1.md': broken,
    'node_modules/three/course.yaml': settings,
    'node_modules/three/chapters/1.md': broken,
  });
  const session = await openSession({ root: folder.folder });
  const told = () =>
    [...session.found.values()]
      .filter(({ diagnostics }) => diagnostics.length > 0)
      .map(({ uri }) => path.relative(folder.folder, fileURLToPath(uri)).split(path.sep).join('/'))
      .sort();
  await expect.poll(told).toEqual(['deep/two/chapters/1.md', 'one/chapters/1.md']);
  await session.close();
  folder.remove();
});
