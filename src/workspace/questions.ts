import { createHash } from 'node:crypto';
import type { FilesBeside, SourceFile } from '../read/index.ts';

/** A question that parsing a chapter asked of the other files, with a print of the answer. */
export type AskedOfFiles = readonly [kind: keyof FilesBeside, about: string, print: string];

/** Asks for all names: what an unknown one may have meant depends on all that exist. */
const all = '*';

/** Wraps files so that each question to them is recorded. */
export function noteQuestions(files: FilesBeside): {
  readonly files: FilesBeside;
  readonly asked: () => readonly AskedOfFiles[];
} {
  const asked = new Map<string, AskedOfFiles>();
  const note = (kind: keyof FilesBeside, about: string): void => {
    const name = `${kind} ${about}`;
    if (!asked.has(name)) asked.set(name, [kind, about, printAnswer(files, kind, about)]);
  };
  const noting = <Names extends ReadonlySet<string> | ReadonlyMap<string, unknown>>(
    kind: keyof FilesBeside,
    names: Names,
  ): Names =>
    new Proxy(names, {
      get(target, property) {
        const value = Reflect.get(target, property, target);
        if (typeof value !== 'function') {
          note(kind, all);
          return value;
        }
        if (property !== 'has' && property !== 'get') {
          note(kind, all);
          return value.bind(target);
        }
        return (name: string) => {
          note(kind, name);
          return value.call(target, name);
        };
      },
    });
  return {
    files: {
      media: noting('media', files.media),
      unfit: noting('unfit', files.unfit),
      chapters: noting('chapters', files.chapters),
      games: noting('games', files.games),
      get pieces() {
        note('pieces', '');
        return files.pieces;
      },
    },
    asked: () => [...asked.values()],
  };
}

/** Print of an answer; "not there" is one. */
export function printAnswer(files: FilesBeside, kind: keyof FilesBeside, about: string): string {
  if (kind === 'pieces') return files.pieces ?? '';
  const names = files[kind];
  if (about === all) return hashOf([...names.keys()].join('\n'));
  if (kind === 'media' || kind === 'chapters') return names.has(about) ? 'there' : '';
  if (kind === 'unfit') return JSON.stringify(files.unfit.get(about)) ?? '';
  const game = files.games.get(about);
  return game === undefined ? '' : hashOfFile(game);
}

const hashes = new WeakMap<SourceFile, string>();

/** Hash of a file's text, memoised: many chapters ask for one file of games. */
export function hashOfFile(file: SourceFile): string {
  const hash = hashes.get(file) ?? hashOf(contentOf(file));
  hashes.set(file, hash);
  return hash;
}

/** All that is read of a file, not its text alone. */
function contentOf({ text, language, headings, pieces }: SourceFile): string {
  if (language === undefined && headings === undefined && pieces === undefined) return text;
  return JSON.stringify([text, language, headings, pieces]);
}

export function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 22);
}
