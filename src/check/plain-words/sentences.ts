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
  /\d+\s?\.+\s*(?=\S)|\.{2,}(?=\S)|\b(?:z\. ?B|d\. ?h|u\. ?a|s\. ?o|bzw|vgl|bspw|ca|Nr|p\. ?ej|pág|ej|vs|e\. ?g|i\. ?e|cf|etc|no)\./giu;

/** No author's sentence has more characters; what has is left alone. */
const longest = 1000;

/** Splits a text into sentences; a semicolon ends one too, since what follows it is said by itself. */
export function sentencesOf(text: string, language: string): Sentence[] {
  const masked = text.replace(innerPoints, (match) => match.replace(/[.\s]/g, ','));
  const found: Sentence[] = [];
  for (const { segment, index } of segmenterFor(language).segment(masked)) {
    let start = index;
    for (const part of segment.split(/(?<=;)/)) {
      const own = text.slice(start, start + part.length);
      const lead = own.length - own.trimStart().length;
      const words = own.trim();
      if (words !== '' && words.length <= longest) found.push({ start: start + lead, text: words });
      start += part.length;
    }
  }
  return found;
}
