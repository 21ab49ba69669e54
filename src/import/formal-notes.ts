import type { ImportNote } from './types.ts';

/**
 * Where a file is not as the standard says, but nothing of it is lost: so each is told once, with the first
 * place and the number of the others. `subject` is what stands there.
 */
const sentences = {
  controls: () => 'A control character stands here; a space takes its place.',
  windows: () =>
    'This game has signs that only Windows-1252 has, such as “ and –; it is read so (PGN standard, 4.1).',
  'long-line': (length: string) =>
    `This line has ${length} characters; the standard allows 255 (4.3).`,
  'long-string': (name: string) =>
    `The value of the tag \`${name}\` has more than 255 characters, against the standard (7).`,
  tab: (name: string) =>
    `The value of the tag \`${name}\` has a tab in it, against the standard (7).`,
  'tag-name': (name: string) =>
    `The name of the tag \`${name}\` has letters outside ASCII, against the standard (4.1).`,
  signs: (san: string) =>
    `\`${san}\` has signs outside ASCII, against the standard (4.1); it is read all the same.`,
  zeros: (san: string) =>
    `\`${san}\` is castling with zeros; the standard has the letter O (8.2.3.3).`,
  'fen-alone': () => 'The tag FEN stands here without SetUp "1" (9.7); it is read all the same.',
  'no-result': () => 'No result ends this game (8.2.6); it is kept without one.',
} satisfies Readonly<Record<string, (subject: string) => string>>;

export type Formality = keyof typeof sentences;

export interface FormalNotes {
  readonly see: (
    kind: Formality,
    place: Pick<ImportNote, 'game' | 'line'>,
    subject?: string,
  ) => void;
  /** A note for each kind that was seen, in the order of their first places. */
  readonly all: () => ImportNote[];
}

export function createFormalNotes(): FormalNotes {
  const seen = new Map<Formality, { note: ImportNote; count: number }>();
  return {
    see(kind, { game, line }, subject = '') {
      const known = seen.get(kind);
      if (known) known.count += 1;
      else {
        const note = {
          game,
          line,
          message: sentences[kind](subject),
          text: '',
          formal: true,
        } as const;
        seen.set(kind, { note, count: 1 });
      }
    },
    all: () =>
      [...seen.values()].map(({ note, count }) => {
        if (count === 1) return note;
        const more =
          count === 2 ? 'one more place' : `${(count - 1).toLocaleString('en')} more places`;
        return { ...note, message: `${note.message} So in ${more}.` };
      }),
  };
}
