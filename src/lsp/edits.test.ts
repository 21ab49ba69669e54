import path from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  CodeActionRequest,
  CompletionRequest,
  DidChangeTextDocumentNotification,
  DocumentRangeFormattingRequest,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  ReferencesRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { runs } from '../../tests/setup/runs.ts';
import { checkCourse } from '../check/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import { buildCourse } from '../model/index.ts';
import { findFiles, readCourse } from '../read/index.ts';
import { withUnsaved } from '../workspace/index.ts';
import { uriOf } from './addresses.ts';
import { courseFolder } from './testing/course-folder.ts';
import { openSession } from './testing/open-session.ts';

const chapters = {
  'chapters/1.md':
    '---\ntitle: One\n---\n\n```moves\n1. d4 d5 2. c4 {:here[gambit] 𝕏 :claim[material 0]} e6\n  ( 2... c6 3. Nf3 )\n3. Nc3\n```\n\nSo `2.c4`, see [there](pos:end).\n',
  'chapters/2.md':
    '---\ntitle: Two\n---\r\n\r\n```moves from="gambit"\r\n2... Nf6 {:here[end]} 3. Nc3\r\n```\r\n\n```exercise at="end"\nask: Which?\nanswer: 3. Nc3\n```\n',
};

const pieces = [
  'Nf3',
  ' 3. ',
  '{',
  '}',
  '(',
  ')',
  '```',
  '```moves\n',
  ':here[gambit]',
  ':claim[isolated d5]',
  '[x](pos:end)',
  '\n',
  '\r\n',
  '\r',
  '---\n',
  'title: ',
  '𐐀',
  '\u0000',
  '\uFEFF',
  '',
  ' ',
  '?!',
  '$14',
  'from="end"',
];

const edit = fc.record({
  file: fc.nat({ max: 1 }),
  /** In ten thousandths of the text. */
  at: fc.nat({ max: 9999 }),
  length: fc.oneof(fc.constant(0), fc.nat({ max: 12 })),
  text: fc.constantFrom(...pieces),
  asks: fc.nat({ max: 24 }),
});

/** Questions of an editor, one after some of the edits. */
const questions = [
  CompletionRequest,
  HoverRequest,
  ReferencesRequest,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  SemanticTokensRequest,
  CodeActionRequest,
  DocumentRangeFormattingRequest,
];

// `LINEWRIGHT_TEST_RUNS=10` makes 2,000 edits.
test('random edits and questions: nothing fails, and the findings are those of a check', async () => {
  const course = courseFolder({ 'course.yaml': 'title: A\nid: a\nside: white\n', ...chapters });
  const session = await openSession();
  const files = Object.entries(chapters).map(([file, text]) => ({
    file,
    uri: uriOf(path.join(course.folder, file)),
    text,
    version: 1,
  }));
  for (const { uri, text } of files) await session.open(uri, text);
  const seed = Number(process.env.LINEWRIGHT_SEED ?? 7);
  const edits = fc.sample(edit, { seed, numRuns: runs(200) });
  for (const [count, { file: which, at, length, text, asks }] of edits.entries()) {
    const file = files[which];
    if (!file) continue;
    // A text that has become a heap of pieces tells nothing more.
    const start = Math.floor((at / 10_000) * file.text.length);
    const before = TextDocument.create('', '', 0, file.text);
    const isAnew = count % 40 === 39;
    file.text = isAnew
      ? (Object.values(chapters)[which] ?? '')
      : file.text.slice(0, start) + text + file.text.slice(start + length);
    file.version += 1;
    const range = { start: before.positionAt(start), end: before.positionAt(start + length) };
    // An offset between the two signs of a line end has no position: then the whole text goes.
    const isExact =
      before.offsetAt(range.start) === start && before.offsetAt(range.end) === start + length;
    const isWhole = isAnew || count % 2 === 0 || !isExact;
    await session.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: file.uri, version: file.version },
      contentChanges: [isWhole ? { text: file.text } : { range, text }],
    });
    const question = questions[asks];
    if (!question) continue;
    const position = { line: at % 14, character: at % 40 };
    await session.client.sendRequest(question.method, {
      textDocument: { uri: file.uri },
      position,
      range: { start: position, end: { line: 99, character: 0 } },
      context: { includeDeclaration: true, diagnostics: [] },
      options: {},
    });
  }
  const onDisk = await findFiles(course.folder);
  const unsaved = new Map(files.map(({ file, text }) => [file, text.replace(/^\uFEFF/, '')]));
  const fresh = checkCourse(buildCourse(readCourse(withUnsaved(onDisk, unsaved)))).diagnostics;
  for (const { file, uri, version } of files) {
    const { diagnostics } = await session.findings(uri, version);
    const expected = fresh.filter(({ place }) => place.file === file).map(inShort);
    expect(diagnostics.map(({ code, message }) => `${code} ${message}`)).toEqual(expected);
  }
  expect(session.logged).toEqual([]);
  expect(await session.close()).toBe(0);
  course.remove();
});

function inShort({ rule, message, hint }: Diagnostic): string {
  return `${rule} ${hint === undefined ? message : `${message}\n${hint}`}`;
}
