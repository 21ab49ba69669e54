import { colourIn, type Look } from '../../look/index.ts';

const used = ['paper', 'ink', 'quiet', 'rule', 'accent'] as const;
type Colours = Readonly<Record<(typeof used)[number], string>>;

/** The colours of a letter, those of the course's pages, for programs on light and on dark ground. */
export interface MailColours {
  readonly light: Colours;
  readonly dark: Colours;
}

export function mailColours(look: Look | undefined): MailColours {
  const inMode = (mode: 'light' | 'dark') =>
    Object.fromEntries(used.map((name) => [name, colourIn(look, name, mode)])) as Colours;
  return { light: inMode('light'), dark: inMode('dark') };
}

/**
 * The looks of a letter, to be written into its elements. Only what mail programs widely know:
 * colours as six figures, sizes in pixels, margins on paragraphs. A board has its width as a part of the column, since
 * the words that stand for one that is not loaded would else keep the column as wide as it.
 */
export const mailCss = (
  start: 'left' | 'right',
  { light: { paper, ink, quiet, rule, accent } }: MailColours,
) => `
h1 { margin: 0 0 12px; font-size: 28px; line-height: 34px; font-weight: bold; }
h2 { margin: 32px 0 10px; font-size: 22px; line-height: 28px; font-weight: bold; }
h3, h4, h5, h6 { margin: 24px 0 8px; font-size: 18px; line-height: 25px; font-weight: bold; }
p { margin: 0 0 14px; }
a { color: ${accent}; }
ul, ol { margin: 0 0 14px; padding-${start}: 26px; }
li { margin: 0 0 6px; }
blockquote { margin: 0 0 14px; padding-${start}: 16px; border-${start}: 2px solid ${rule}; }
pre { margin: 0 0 14px; font-size: 14px; line-height: 20px; white-space: pre-wrap; word-break: break-word; }
.code { font-family: monospace; word-break: break-word; }
hr { margin: 24px 0; border: 0; border-top: 1px solid ${rule}; }
td.part > .above, td.part > .number { margin: 0 0 4px; font-size: 15px; line-height: 20px; color: ${quiet}; }
.part .summary { margin: 0 0 24px; font-style: italic; }
.variations { margin: 0 0 14px; margin-${start}: 20px; }
.variations p { margin: 0 0 6px; }
.from, .event, .game-exit, .count, .legend { font-size: 15px; line-height: 22px; }
.players { margin: 0; font-weight: bold; }
.diagram, .pattern, .exercise-board { margin: 0 0 22px; text-align: center; }
.pattern-title, .exercise-number, .line-heading { margin: 0 0 4px; font-weight: bold; }
.places { text-align: ${start}; }
.fold { margin: 0; font-style: italic; }
.to-move { font-style: italic; }
img { border: 0; }
img.board { display: block; width: 100%; max-width: 320px; height: auto; margin: 0 auto 8px; background-color: ${paper}; color: ${ink}; font-size: 15px; line-height: 20px; }
.table table { margin: 0 0 16px; border-collapse: collapse; font-size: 16px; line-height: 22px; word-break: break-word; }
.table th, .table td { padding: 5px 14px 5px 0; border-bottom: 1px solid ${rule}; text-align: ${start}; vertical-align: top; }
.table .align-right { text-align: right; }
.table .align-center { text-align: center; }
.answers, .footnotes { margin: 32px 0 0; border-top: 1px solid ${rule}; }
.footnotes { font-size: 15px; line-height: 22px; }
.foot p { margin: 0 0 6px; font-size: 14px; line-height: 20px; color: ${quiet}; }
`;

/**
 * What cannot be written into elements; a program that takes no style sheets leaves it out, and
 * nothing is lost: narrower margins on phones, and a dark paper of our own choice.
 */
export const mailSheet = ({ dark }: MailColours) => `
@media (max-width: 620px) {
  .part, .foot { padding-left: 16px !important; padding-right: 16px !important; }
}
@media (prefers-color-scheme: dark) {
  body, .paper { background-color: ${dark.paper} !important; }
  .part, .part h1, .part h2, .part h3, .part h4 { color: ${dark.ink} !important; }
  .part a, .foot a { color: ${dark.accent} !important; }
  .part .above, .part .number, .foot p { color: ${dark.quiet} !important; }
  .part .table th, .part .table td, .part blockquote { border-color: ${dark.rule} !important; }
}
`;
