import { defaultColour } from '../look/defaults.ts';
import { lookBlocks } from '../look/look-blocks.ts';
import { type Ink, inks, type Paint, paints } from './paint.ts';

/**
 * The style sheet of boards. Each ink is a custom property of its name, so a page can set its own; for `host` they
 * are set here, for the element whose shadow the style is in.
 */
export function boardCss(scope: 'page' | 'host' = 'page'): string {
  const rules = Object.entries(paints).map(([part, paint]) => rule(`.${part}`, painted(paint)));
  return [
    ...(scope === 'host' ? [lookBlocks(inks, defaultColour, scope)] : []),
    rule('.board', ['display: block', 'width: 100%', 'height: auto']),
    rule('.board-sprite', ['position: absolute']),
    ...rules,
    rule('.board-coordinate', [
      'font: 34px var(--text-face, Georgia, serif)',
      'text-anchor: middle',
      'direction: ltr',
    ]),
    '',
  ].join('\n');
}

function painted({ fill, stroke, width, dash, round }: Paint): string[] {
  const lines = [`fill: ${fill ? property(fill) : 'none'}`];
  if (stroke) lines.push(`stroke: ${property(stroke)}`, `stroke-width: ${width}`);
  if (dash) lines.push(`stroke-dasharray: ${dash}`);
  if (round) lines.push('stroke-linecap: round', 'stroke-linejoin: round');
  return lines;
}

function property(ink: Ink): string {
  return `var(--${ink})`;
}

function rule(selector: string, lines: readonly string[]): string {
  return `${selector} {\n${lines.map((line) => `  ${line};\n`).join('')}}`;
}
