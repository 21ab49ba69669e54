import type { Diagnostic } from '../../diagnostics/index.ts';
import type { LetterText } from './choose-text.ts';

/**
 * Bytes of HTML that mail programs show; Gmail cuts off what goes beyond and offers the rest on
 * another page. Told as 102 KB by its senders' guides, not by Gmail; read as the smaller of its two
 * meanings. Pictures do not count.
 */
const clipSize = 102_000;

/** A letter that will not arrive whole. */
export function letterLong(html: string, text: LetterText): Diagnostic[] {
  const bytes = Buffer.byteLength(html);
  if (bytes <= clipSize) return [];
  const kilobytes = Math.ceil(bytes / 1000);
  const [longest, ...others] = text.sections;
  const hint =
    longest === undefined
      ? 'Send less at a time: fewer positions, or a chapter that is divided by headings.'
      : `Send it in parts with --section: ${[longest, ...others].map((each) => `"${each}"`).join(', ')}.`;
  return [
    {
      rule: 'letter-long',
      severity: 'warning',
      place: text.place,
      message: `This letter has ${kilobytes} KB of HTML, and mail programs cut off what goes beyond 102 KB.`,
      hint,
      related: [],
    },
  ];
}
