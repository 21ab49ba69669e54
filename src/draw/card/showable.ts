import { setText, textBox } from './set-text.ts';

/** Whether the fonts have a sign, as far as it was asked. A sign is what a reader takes for one. */
const inFonts = new Map<string, boolean>();
const signs = new Intl.Segmenter();

/**
 * What the fonts can show of a line. A sign they lack is first replaced by its compatibility
 * equivalent (the ligature `ﬁ` by `fi`; Unicode Standard Annex 15). If it is a letter, digit or
 * combining mark and still lacking, the whole line is left out, since half a word misleads; any
 * other sign, such as an emoji, is left out by itself. `onLoss` hears what was left out.
 */
export async function showable(line: string, onLoss: (message: string) => void): Promise<string> {
  const text = line.normalize('NFC').replaceAll(/\s+/g, ' ').trim();
  const first = await missingFrom(text);
  if (first.length === 0) return text;
  const plain = replaceEach(text, first, (sign) => sign.normalize('NFKC'));
  const missing = await missingFrom(plain);
  if (missing.length === 0) return plain;
  const named = missing.map((sign) => `"${sign}"`).join(', ');
  if (missing.some((sign) => /[\p{L}\p{N}\p{M}]/u.test(sign))) {
    onLoss(`the line "${line}" is left out of the picture: its fonts have no ${named}`);
    return '';
  }
  onLoss(`the line "${line}" is shown without ${named}, which the picture's fonts lack`);
  return replaceEach(plain, missing, () => '')
    .replaceAll(/\s+/g, ' ')
    .trim();
}

async function missingFrom(text: string): Promise<readonly string[]> {
  const found = new Set([...signs.segment(text)].map(({ segment }) => segment));
  const unknown = [...found].filter((sign) => !inFonts.has(sign));
  if (unknown.length > 0) {
    const { missing } = await setText(textBox({ fontSize: 10 }, unknown.join(' ')), 10_000, 20);
    for (const sign of unknown) inFonts.set(sign, !missing.has(sign));
  }
  return [...found].filter((sign) => !inFonts.get(sign));
}

function replaceEach(
  text: string,
  signs: readonly string[],
  replace: (sign: string) => string,
): string {
  return signs.reduce((rest, sign) => rest.replaceAll(sign, replace(sign)), text);
}
