import type { Box } from '../geometry.ts';
import type { Inks } from '../paint.ts';
import { fitTitle, type SetLine, setLines } from './card-title.ts';
import type { Words } from './collage.ts';
import { textBox } from './set-text.ts';

/** The lines of a card from top to bottom; an empty one is not set. */
export interface CardWords {
  readonly above: string;
  readonly title: string;
  readonly below: string;
}

/** The part of the height that the title may take. */
const titlePart = 0.55;

/** From the title to the two rules below it, from these to the next line, and between them. */
const rules = { before: 30, after: 26, thick: 5, gap: 4, thin: 1.5, width: 96 };
const rulesHeight = rules.before + rules.thick + rules.gap + rules.thin + rules.after;
/** Font size of the lines above and below. */
const lineSize = 29;
/** What is left of the height is shared: so much of it stands above the title. */
const shareAbove = 1 / 2.4;

/** The words of a card in outlines, laid out in a box of pixels. */
export async function layOutCard(
  words: CardWords,
  {
    language,
    inks: { ink, 'board-coordinate': quiet },
  }: { readonly language: string; readonly inks: Inks },
  box: Box,
): Promise<Words[]> {
  const { x, y, width, height } = box;
  const above = await setLine(words.above, { width, language, ink, isItalic: true });
  const below = await setLine(words.below, { width, language, ink });
  const title = await fitTitle(words.title, { width, height: height * titlePart, language, ink });
  const used = above.height + title.height + rulesHeight + below.height;
  const titleY = y + Math.round(above.height + Math.max(0, height - used) * shareAbove);
  const rulesY = Math.round(titleY + title.height) + rules.before;
  const belowY = Math.round(rulesY + rulesHeight) - rules.before;
  return [
    // First, so that its overhang hides none of the others where they come close.
    { svg: title.svg, x, y: titleY - title.overhang, width },
    { svg: above.svg, x, y: y - above.overhang, width, recur: true },
    { svg: rulesSvg(quiet), x, y: rulesY, width: rules.width, recur: true },
    { svg: below.svg, x, y: belowY - below.overhang, width, recur: true },
  ].filter(({ svg }) => svg !== '');
}

const rulesSvg = (quiet: string) =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${rules.width}" height="12">`,
    `<path fill="${quiet}" d="M0 0h${rules.width}v${rules.thick}h-${rules.width}z`,
    `M0 ${rules.thick + rules.gap}h${rules.width}v${rules.thin}h-${rules.width}z"/></svg>`,
  ].join('');

interface LineStyle {
  readonly width: number;
  readonly language: string;
  readonly ink: string;
  readonly isItalic?: boolean;
}

/** The lines that were set last: all cards of a course have the same two. */
const keptLines = new Map<string, SetLine>();
const mostLines = 16;

async function setLine(text: string, style: LineStyle): Promise<SetLine> {
  if (text === '') return { svg: '', height: 0, overhang: 0 };
  const key = JSON.stringify([text, style]);
  const known = keptLines.get(key);
  if (known) return known;
  const { width, language, ink, isItalic } = style;
  const font = {
    fontSize: lineSize,
    lineHeight: 1.3,
    lineClamp: 2,
    color: ink,
    textWrap: 'balance',
  };
  const slope = isItalic ? { fontStyle: 'italic' } : {};
  const names = { id: 'lines', lang: language };
  const line = await setLines(
    textBox({ display: 'block', ...font, ...slope }, text, names),
    width,
    lineSize,
  );
  if (keptLines.size >= mostLines) keptLines.clear();
  keptLines.set(key, line);
  return line;
}
