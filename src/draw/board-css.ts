import { type Ink, inks, type Paint, paints, palettes, type Theme } from './paint.ts';

/**
 * The style sheet of boards in pages: the file `board.css` beside this one, which a test keeps
 * equal. Each ink is a custom property `--board-…` of the root, so a page can set its own.
 * The dark theme follows the reader's system unless the root says `data-theme="light"` or `"dark"`;
 * print is one colour. For `host` the inks are those of the element whose shadow the style is in.
 */
export function boardCss(scope: 'page' | 'host' = 'page'): string {
  const root = (test = '') =>
    scope === 'page' ? `:root${test}` : test === '' ? ':host' : `:host(${test})`;
  const light = root();
  const notLight = root(':not([data-theme="light"])');
  const dark = root('[data-theme="dark"]');
  const rules = Object.entries(paints).map(([part, paint]) => rule(`.${part}`, painted(paint)));
  return [
    '/* Made from src/draw/paint.ts by `npx vitest run src/draw -u`; do not edit. */',
    rule(light, theme('light')),
    '@media (prefers-color-scheme: dark) {',
    indent(rule(notLight, theme('dark'))),
    '}',
    rule(dark, theme('dark')),
    '@media print {',
    indent(rule([light, notLight, dark].join(',\n'), theme('print'))),
    '}',
    rule('.board', ['display: block', 'width: 100%', 'height: auto']),
    rule('.board-sprite', ['position: absolute']),
    ...rules,
    rule('.board-coordinate', [
      'font: 34px var(--serif, Georgia, serif)',
      'text-anchor: middle',
      'direction: ltr',
    ]),
    '',
  ].join('\n');
}

function theme(name: Theme): string[] {
  return inks.map((ink) => `--board-${ink}: ${palettes[name][ink]}`);
}

function painted({ fill, stroke, width, dash, round }: Paint): string[] {
  const lines = [`fill: ${fill ? property(fill) : 'none'}`];
  if (stroke) lines.push(`stroke: ${property(stroke)}`, `stroke-width: ${width}`);
  if (dash) lines.push(`stroke-dasharray: ${dash}`);
  if (round) lines.push('stroke-linecap: round', 'stroke-linejoin: round');
  return lines;
}

function property(ink: Ink): string {
  return `var(--board-${ink})`;
}

function rule(selector: string, lines: readonly string[]): string {
  return `${selector} {\n${lines.map((line) => `  ${line};\n`).join('')}}`;
}

function indent(text: string): string {
  return text.replaceAll(/^/gm, '  ');
}
