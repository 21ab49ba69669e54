import type {
  Position,
  Range,
  TextDocumentContentChangeEvent,
} from 'vscode-languageserver-protocol';
import { TextDocument } from 'vscode-languageserver-textdocument';

export type { TextDocument };

/** How a client counts within a line: units of UTF-16, or bytes of UTF-8. */
export type Encoding = 'utf-16' | 'utf-8';

/** A text with its version: that of the editor; null for a file that is only on the disk. */
export interface OpenText {
  readonly uri: string;
  readonly version: number | null;
  readonly document: TextDocument;
}

/** The first encoding of a client's list that is known here. Every client knows UTF-16, whether it says so or not. */
export function chooseEncoding(offered: readonly string[] = []): Encoding {
  return offered.find((one) => one === 'utf-8' || one === 'utf-16') === 'utf-8'
    ? 'utf-8'
    : 'utf-16';
}

export function openText(uri: string, version: number | null, text: string): OpenText {
  return { uri, version, document: TextDocument.create(uri, '', version ?? 0, text) };
}

/** A course's places are counted without the mark of the byte order, which an editor may keep in its text. */
function markLength(document: TextDocument): number {
  return document.getText({ start: origin, end: { line: 0, character: 1 } }) === '\uFEFF' ? 1 : 0;
}

const origin = { line: 0, character: 0 };

/** The text as the course has it: without a byte order mark. */
export function textOf({ document }: OpenText): string {
  return document.getText().slice(markLength(document));
}

/** Positions of one client, and offsets in the texts of courses. Whatever a client sends is taken to its nearest place. */
export function createPlaces(encoding: Encoding) {
  /** A client's position as one in units of UTF-16. */
  const inUnits = (document: TextDocument, position: Position): Position => {
    const line = whole(position?.line);
    const character = whole(position?.character);
    if (line >= document.lineCount) return document.positionAt(document.getText().length);
    return {
      line,
      character: encoding === 'utf-8' ? unitsOf(lineText(document, line), character) : character,
    };
  };
  const fromUnits = (document: TextDocument, position: Position): Position =>
    encoding === 'utf-16'
      ? position
      : {
          line: position.line,
          character: Buffer.byteLength(
            lineText(document, position.line).slice(0, position.character),
          ),
        };
  const toPosition = ({ document }: OpenText, offset: number): Position =>
    fromUnits(document, document.positionAt(offset + markLength(document)));
  return {
    toOffset: ({ document }: OpenText, position: Position): number =>
      Math.max(0, document.offsetAt(inUnits(document, position)) - markLength(document)),
    toPosition,
    toRange: (text: OpenText, start: number, end: number): Range => ({
      start: toPosition(text, start),
      end: toPosition(text, end),
    }),
    /** The text after changes, each made to the result of the one before it. */
    change(
      { uri, document }: OpenText,
      version: number,
      changes: readonly TextDocumentContentChangeEvent[],
    ): OpenText {
      let changed = document;
      for (const change of changes) {
        const text = String(change.text);
        const made =
          'range' in change
            ? {
                text,
                range: {
                  start: inUnits(changed, change.range.start),
                  end: inUnits(changed, change.range.end),
                },
              }
            : { text };
        changed = TextDocument.update(changed, [made], version);
      }
      return { uri, version, document: changed };
    },
  };
}

export type Places = ReturnType<typeof createPlaces>;

function whole(number: unknown): number {
  return typeof number === 'number' && number > 0 ? Math.floor(number) : 0;
}

function lineText(document: TextDocument, line: number): string {
  return document.getText({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
}

/** How many units of UTF-16 the first bytes of a text are; a byte within a character counts as its start. */
function unitsOf(text: string, bytes: number): number {
  let units = 0;
  let left = bytes;
  for (const character of text) {
    left -= Buffer.byteLength(character);
    if (left < 0) break;
    units += character.length;
  }
  return units;
}
