import { fitTitle, type SetLine } from './card-title.ts';
import { palettes } from './paint.ts';
import { setText, textBox } from './set-text.ts';

/** The lines of a card from top to bottom; an empty one is not set. */
export interface CardWords {
  readonly above: string;
  readonly title: string;
  readonly below: string;
}

const { ink } = palettes.light;

/** The part of the height that the title may take. */
const titlePart = 0.55;

/** From the title to the two rules below it, from these to the next line, and between them. */
const rules = { before: 30, after: 26, thick: 5, gap: 4, thin: 1.5, width: 96 };
const rulesHeight = rules.before + rules.thick + rules.gap + rules.thin + rules.after;
/** What is left of the height is shared: so much of it stands above the title. */
const shareAbove = 1 / 2.4;

/** The words of a card as an SVG document of this size, in outlines. */
export async function layOutCard(
  words: CardWords,
  language: string,
  { width, height }: { readonly width: number; readonly height: number },
): Promise<string> {
  const above = await setLine(words.above, { width, language, isItalic: true });
  const below = await setLine(words.below, { width, language });
  const title = await fitTitle(words.title, { width, height: height * titlePart, language });
  const used = above.height + title.height + rulesHeight + below.height;
  const titleY = Math.round(above.height + Math.max(0, height - used) * shareAbove);
  const rulesY = Math.round(titleY + title.height) + rules.before;
  const belowY = rulesY + rulesHeight - rules.before;
  const place = (svg: string, y: number) => svg.replace('<svg ', `<svg y="${y}" `);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">`,
    above.svg,
    place(title.svg, titleY),
    `<path fill="${ink}" d="M0 ${rulesY}h${rules.width}v${rules.thick}h-${rules.width}z`,
    `M0 ${rulesY + rules.thick + rules.gap}h${rules.width}v${rules.thin}h-${rules.width}z"/>`,
    place(below.svg, belowY),
    '</svg>',
  ].join('');
}

interface LineStyle {
  readonly width: number;
  readonly language: string;
  readonly isItalic?: boolean;
}

/** The lines that were set last: all cards of a course have the same two. */
const setLines = new Map<string, SetLine>();
const keptLines = 16;

async function setLine(text: string, style: LineStyle): Promise<SetLine> {
  if (text === '') return { svg: '', height: 0 };
  const key = JSON.stringify([text, style]);
  const known = setLines.get(key);
  if (known) return known;
  const { width, language, isItalic } = style;
  const font = { fontSize: 29, lineHeight: 1.3, lineClamp: 2, color: ink };
  const slope = isItalic ? { fontStyle: 'italic' } : {};
  const box = textBox({ display: 'block', ...font, ...slope }, text, {
    id: 'line',
    lang: language,
  });
  const { svg, boxes } = await setText(box, width);
  const line = { svg, height: boxes.get('line')?.height ?? 0 };
  if (setLines.size >= keptLines) setLines.clear();
  setLines.set(key, line);
  return line;
}
