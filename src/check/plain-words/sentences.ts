/** Sentences of a text, found by the language's own rules: `Intl.Segmenter`, Unicode Annex 29. */

export interface Sentence {
  readonly start: number;
  readonly text: string;
}

const segmenters = new Map<string, Intl.Segmenter>();

function segmenterFor(language: string): Intl.Segmenter {
  const known =
    segmenters.get(language) ?? new Intl.Segmenter(language, { granularity: 'sentence' });
  segmenters.set(language, known);
  return known;
}

/** Points that end no sentence: of move numbers (`7. Bg2`, `7...Be7`), of short forms (`z. B.`). */
const innerPoints =
  /(?<![\p{L}\d])\d{1,3}\s?\.+\s*(?=[\p{Lu}♔-♟]?[a-h]?[1-8]?[x:]?[a-h][1-8]|[O0]-[O0])|\.{2,}(?=\S)|\b(?:z\. ?B|d\. ?h|u\. ?a|s\. ?o|bzw|vgl|bspw|ca|Nr|p\. ?ej|pág|ej|vs|e\. ?g|i\. ?e|cf|etc|no)\./giu;

/** No author's sentence has more characters; what has is left alone. */
const longest = 1000;

const split = new WeakMap<object, readonly Sentence[]>();

/** The sentences of a text that is one and the same object in one language: split once, whoever asks. */
export function sentencesIn(
  passage: { readonly text: string },
  language: string,
): readonly Sentence[] {
  const known = split.get(passage) ?? sentencesOf(passage.text, language);
  split.set(passage, known);
  return known;
}

/** Words and commas with one point at the end: no rule of any language divides them. */
const oneSentence = /^[\p{L}\p{M}\p{N} ,\uE000\uE001]*[.!?]?$/u;

/** Splits a text into sentences; a semicolon ends one too, since what follows it is said by itself. */
export function sentencesOf(text: string, language: string): Sentence[] {
  if (text.length <= longest && oneSentence.test(text)) {
    const words = text.trim();
    return words === '' ? [] : [{ start: text.length - text.trimStart().length, text: words }];
  }
  const masked = text.replace(innerPoints, (match) => match.replace(/[.\s]/g, ','));
  const found: Sentence[] = [];
  for (const piece of piecesOf(masked)) {
    for (const { segment, index } of segmenterFor(language).segment(piece.text)) {
      let start = piece.start + index;
      for (const part of segment.split(/(?<=;)/)) {
        const own = text.slice(start, start + part.length);
        const lead = own.length - own.trimStart().length;
        const words = own.trim();
        if (words !== '' && words.length <= longest) {
          found.push({ start: start + lead, text: words });
        }
        start += part.length;
      }
    }
  }
  return found;
}

/**
 * Pieces of some hundred characters that end where a sentence may: V8 copies the whole text for each segment that
 * it finds. A stretch without such an end is longer than a sentence, and left out.
 */
function* piecesOf(text: string): Generator<Sentence> {
  if (text.length <= longest) {
    yield { start: 0, text };
    return;
  }
  let start = 0;
  let end = 0;
  for (const { 0: stop, index } of text.matchAll(/[.!?…;\n]["”“»)]*\s|$/gu)) {
    const next = index + stop.length;
    if (next - start > longest && end > start) {
      yield { start, text: text.slice(start, end) };
      start = end;
    }
    if (next - start > longest) start = next;
    end = next;
  }
  if (end > start) yield { start, text: text.slice(start, end) };
}
