import type { ElementContent, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import juice from 'juice';
import { element } from '../../render/index.ts';
import { directionOf } from '../../strings/index.ts';
import type { LetterFrame } from './letter-frame.ts';
import { type MailColours, mailCss, mailSheet } from './mail-css.ts';

/** Sizes of pictures stand in their attributes already, for programs that know no others. */
const sizesStay = { applyWidthAttributes: false, applyHeightAttributes: false };
const type =
  'font-family: Georgia, Times, serif; font-size: 17px; line-height: 26px; mso-line-height-rule: exactly; word-break: break-word';

/**
 * A letter as an HTML document: one column of 600 pixels in layout tables, the looks written into
 * the elements. `preview` is what mail programs show beside the subject.
 */
export function makeMailHtml(
  letter: {
    readonly language: string;
    readonly subject: string;
    readonly preview: string;
    readonly colours: MailColours;
  },
  { head, foot }: LetterFrame,
  body: readonly ElementContent[],
): string {
  const { language, subject, preview, colours } = letter;
  const { paper: sheet, ink, rule } = colours.light;
  const direction = directionOf(language);
  const start = direction === 'ltr' ? 'left' : 'right';
  const cell = (className: string, style: string, content: readonly ElementContent[]) =>
    element('tr', {}, [element('td', { className: [className], style }, content)]);
  const column = layoutTable({ width: 600, style: 'width: 100%; max-width: 600px' }, [
    cell('part', `padding: 32px 24px; ${type}; color: ${ink}; text-align: ${start}`, [
      ...head,
      ...body,
    ]),
    cell('foot', `padding: 16px 24px 40px; ${type}; border-top: 1px solid ${rule}`, foot),
  ]);
  const page = layoutTable(
    { width: '100%', className: ['paper'], style: `background-color: ${sheet}` },
    [element('tr', {}, [element('td', { align: 'center' }, [column])])],
  );
  const hidden = 'display: none; max-height: 0; overflow: hidden; mso-hide: all';
  const content: Root = {
    type: 'root',
    // Web mail drops <html> and <body>, and what they say of the language.
    children: [
      element('div', { lang: language, dir: direction }, [
        element('div', { style: hidden }, [preview]),
        page,
      ]),
    ],
  };
  const title = toHtml(element('title', {}, [subject]));
  return [
    '<!doctype html>',
    `<html lang="${language}" dir="${direction}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width">',
    '<meta name="color-scheme" content="light dark">',
    '<meta name="supported-color-schemes" content="light dark">',
    title,
    `<style>${mailSheet(colours)}</style>`,
    '</head>',
    `<body style="margin: 0; padding: 0; background-color: ${sheet}">`,
    juice.inlineContent(toHtml(content), mailCss(start, colours), sizesStay),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function layoutTable(
  properties: Readonly<Record<string, string | number | string[]>>,
  rows: readonly ElementContent[],
) {
  const layout = { role: 'presentation', cellPadding: '0', cellSpacing: '0', border: 0 };
  return element('table', { ...layout, ...properties }, rows);
}
