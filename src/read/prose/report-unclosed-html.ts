import type { Html } from 'mdast';
import { placeOf, type TextContext } from '../text-context.ts';

/** HTML that Markdown passes through up to its end marker, or else to the end of the text (CommonMark, 4.6). */
const verbatim: readonly { readonly opens: RegExp; readonly ends: string }[] = [
  { opens: /^<!--/, ends: '-->' },
  { opens: /^<\?/, ends: '?>' },
  { opens: /^<!\[CDATA\[/, ends: ']]>' },
  { opens: /^<pre(?:\s[^>]*)?>/i, ends: '</pre>' },
  { opens: /^<script(?:\s[^>]*)?>/i, ends: '</script>' },
  { opens: /^<style(?:\s[^>]*)?>/i, ends: '</style>' },
  { opens: /^<textarea(?:\s[^>]*)?>/i, ends: '</textarea>' },
];

/** Reports a comment or the like that is not closed: the blocks and text behind it would be lost. */
export function reportUnclosedHtml(node: Html, context: TextContext): void {
  const value = node.value.trimStart();
  for (const { opens, ends } of verbatim) {
    const [opening] = opens.exec(value) ?? [];
    if (opening === undefined) continue;
    const rest = value.slice(opening.length);
    if (rest.trim() === '' || rest.toLowerCase().includes(ends)) return;
    const { file, start } = placeOf(node, context);
    const at = start.offset + node.value.length - value.length;
    const { pointAt } = context.source;
    context.report({
      place: { file, start: pointAt(at), end: pointAt(at + opening.length) },
      message: `\`${opening}\` is opened here and never closed, so what stands behind it is lost.`,
      hint: `Close it with \`${ends}\`, or write \`\\${opening}\` if it is meant as a text.`,
    });
    return;
  }
}
