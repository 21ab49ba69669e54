import type { Box } from './geometry.ts';
import { palettes } from './paint.ts';
import { setText, type TextBox, textBox } from './set-text.ts';

/** The lines of a card from top to bottom; an empty one is not set. */
export interface CardWords {
  readonly above: string;
  readonly title: string;
  readonly below: string;
}

/** A title and the size in pixels that it is set in. */
interface Title {
  readonly text: string;
  readonly size: number;
}

/** The first size at which the title fits is taken. */
const titleSizes = [74, 66, 58, 51, 45, 40, 35];
const smallest = 35;
/** The part of the height that the title may take. */
const titlePart = 0.55;

/** The words of a card as an SVG element at `box`, in outlines. */
export async function layOutCard(words: CardWords, language: string, box: Box): Promise<string> {
  const title = await fitTitle(words.title, box);
  const { svg } = await setText(column(words, title, language), box.width, box.height);
  return svg.replace('<svg ', `<svg x="${box.x}" y="${box.y}" `);
}

/** The title at the largest size that fits, or cut with an ellipsis at the smallest. */
async function fitTitle(text: string, box: Box): Promise<Title> {
  const longest = await longestWord(text);
  for (const size of titleSizes) {
    if (longest * size <= box.width && (await fits({ text, size }, box))) return { text, size };
  }
  const words = text.split(' ');
  for (let kept = words.length - 1; kept > 0; kept -= 1) {
    const cut = { text: `${words.slice(0, kept).join(' ')}…`, size: smallest };
    if (await fits(cut, box)) return cut;
  }
  return { text, size: smallest };
}

async function fits(title: Title, box: Box): Promise<boolean> {
  const { boxes } = await setText(titleBox(title), box.width);
  return (boxes.get('title')?.height ?? 0) <= box.height * titlePart;
}

/** The width of the longest word, in the size of the title. */
async function longestWord(text: string): Promise<number> {
  const words = text.split(' ').map((word, index) => textBox({}, word, { id: `word ${index}` }));
  const style = { flexDirection: 'column', alignItems: 'flex-start' };
  const { boxes } = await setText(textBox({ ...style, ...titleFont(100) }, words), 20_000);
  return Math.max(...[...boxes.values()].map(({ width }) => width / 100));
}

function titleFont(size: number) {
  return { fontSize: size, fontWeight: 600, lineHeight: 1.1, letterSpacing: size * -0.012 };
}

function titleBox({ text, size }: Title): TextBox {
  // A word that is too long even in the smallest size is broken.
  const wrap = { wordBreak: size === smallest ? 'break-word' : 'normal', textWrap: 'balance' };
  return textBox({ display: 'block', ...titleFont(size), ...wrap }, text, { id: 'title' });
}

function column(words: CardWords, title: Title, language: string): TextBox {
  const { ink } = palettes.light;
  const line = { display: 'block', fontSize: 29, lineHeight: 1.3, lineClamp: 2 };
  const rule = (height: number) => textBox({ width: 96, height, backgroundColor: ink });
  const rules = { flexDirection: 'column', gap: 4, marginTop: 30, marginBottom: 26 };
  return textBox(
    { flexDirection: 'column', width: '100%', height: '100%', color: ink },
    [
      textBox({ ...line, fontStyle: 'italic' }, words.above),
      textBox({ flexGrow: 1 }),
      titleBox(title),
      textBox(rules, [rule(5), rule(1.5)]),
      textBox(line, words.below),
      textBox({ flexGrow: 1.4 }),
    ],
    { lang: language },
  );
}
