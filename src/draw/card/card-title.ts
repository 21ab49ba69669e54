import { setText, type TextBox, textBox } from './set-text.ts';

/** Text as an SVG document, and how high its lines are. */
export interface SetLine {
  readonly svg: string;
  readonly height: number;
  /** What the document has above and below the lines, for accents and descenders that leave them. */
  readonly overhang: number;
}

/** A title and the size in pixels that it is set in. */
interface Title {
  readonly text: string;
  readonly size: number;
}

/** The first size at which the title fits is taken. */
const titleSizes = [74, 66, 58, 51, 45, 40, 35];
const smallest = 35;
/** Height of a line, in the size of the title. */
const lineHeight = 1.1;

/** What a title must fit, in pixels. */
interface TitleSpace {
  readonly width: number;
  readonly height: number;
  readonly language: string;
  readonly ink: string;
}

/** The title at the largest size that fits, or cut with an ellipsis at the smallest. */
export async function fitTitle(text: string, space: TitleSpace): Promise<SetLine> {
  await measureSigns(text);
  const longest = Math.max(...text.split(' ').map(widthOf));
  for (const size of titleSizes) {
    if (longest * size > space.width && size !== smallest) continue;
    const whole = await setIfFitting({ text, size }, space);
    if (whole) return whole;
  }
  return cutTitle(text, space);
}

/** As many words as fit, or where not even one does, as many letters. */
async function cutTitle(text: string, space: TitleSpace): Promise<SetLine> {
  let best: SetLine | undefined;
  for (const units of [text.split(/(?<= )/), [...text]]) {
    let [fitting, tooMany] = [0, units.length];
    while (tooMany - fitting > 1) {
      const kept = Math.floor((fitting + tooMany) / 2);
      const start = units.slice(0, kept).join('').trimEnd();
      const cut = await setIfFitting({ text: `${start}…`, size: smallest }, space);
      if (cut) [best, fitting] = [cut, kept];
      else tooMany = kept;
    }
    if (best) return best;
  }
  return setTitle({ text, size: smallest }, space);
}

/** The title if it fits. What is surely too long is not set, since that takes long. */
async function setIfFitting(title: Title, space: TitleSpace): Promise<SetLine | undefined> {
  // As high as it is without a gap at the end of any line.
  const { text, size } = title;
  const least = ((widthOf(text) * kerned * size) / space.width) * lineHeight * size;
  if (least > space.height) return undefined;
  const set = await setTitle(title, space);
  return set.height <= space.height ? set : undefined;
}

async function setTitle(
  { text, size }: Title,
  { width, language, ink }: TitleSpace,
): Promise<SetLine> {
  // A word that is too long even in the smallest size is broken.
  const wrap = { wordBreak: size === smallest ? 'break-word' : 'normal', textWrap: 'balance' };
  const style = { display: 'block', color: ink, ...titleFont(size), ...wrap };
  return setLines(textBox(style, text, { id: 'lines', lang: language }), width, size);
}

/** A box of text of a size, whose `id` is `lines`. */
export async function setLines(box: TextBox, width: number, size: number): Promise<SetLine> {
  const overhang = Math.ceil(size * 0.25);
  const whole = textBox({ padding: `${overhang}px 0`, width: '100%' }, [box]);
  const { svg, boxes } = await setText(whole, width);
  return { svg, height: boxes.get('lines')?.height ?? 0, overhang };
}

/** The width of each sign in the title's font, in its size. Nearly all recur from title to title. */
const signWidths = new Map<string, number>();
/** How much narrower kerning may make a text than its signs are by themselves. */
const kerned = 0.9;

async function measureSigns(text: string): Promise<void> {
  const unknown = [...new Set(text)].filter((sign) => !signWidths.has(sign));
  if (unknown.length === 0) return;
  const signs = unknown.map((sign, index) => textBox({}, sign, { id: String(index) }));
  const style = { flexDirection: 'column', alignItems: 'flex-start', ...titleFont(100) };
  const { boxes } = await setText(textBox(style, signs), 1000);
  for (const [index, sign] of unknown.entries()) {
    signWidths.set(sign, (boxes.get(String(index))?.width ?? 0) / 100);
  }
}

/** The width of a line of measured signs, in its size. */
function widthOf(line: string): number {
  let width = 0;
  for (const sign of line) width += signWidths.get(sign) ?? 0;
  return width;
}

function titleFont(size: number) {
  return { fontSize: size, fontWeight: 600, lineHeight, letterSpacing: size * -0.012 };
}
