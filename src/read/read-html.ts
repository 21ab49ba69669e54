import { createRequire } from 'node:module';
import type { Element, Root } from 'hast';
import type { Html } from 'mdast';
import { visit } from 'unist-util-visit';
import { fileAddress, fileOfAddress } from './file-address.ts';
import { resolveMedia } from './resolve-media.ts';
import { placeOf, type TextContext, takeMedia } from './text-context.ts';

const require = createRequire(import.meta.url);

/** HTML that Markdown takes as it is up to its own end, else up to the end of the text (CommonMark, 4.6). */
const verbatim: readonly { readonly opens: RegExp; readonly ends: string }[] = [
  { opens: /^<!--/, ends: '-->' },
  { opens: /^<\?/, ends: '?>' },
  { opens: /^<!\[CDATA\[/, ends: ']]>' },
  { opens: /^<pre(?:\s[^>]*)?>/i, ends: '</pre>' },
  { opens: /^<script(?:\s[^>]*)?>/i, ends: '</script>' },
  { opens: /^<style(?:\s[^>]*)?>/i, ends: '</style>' },
  { opens: /^<textarea(?:\s[^>]*)?>/i, ends: '</textarea>' },
];

/** Tells of a comment, or the like, that is not closed: blocks and text behind it would be lost. */
function reportUnclosed(node: Html, context: TextContext): void {
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

/** Finds the files that HTML in a chapter shows and hands out; a picture that is none is a problem. */
export function readHtml(node: Html, context: TextContext): void {
  reportUnclosed(node, context);
  if (!/<(?:a|img)\s/i.test(node.value)) return;
  // Few chapters have any, and loading a parser of HTML takes as long as a small check.
  const { raw } = require('hast-util-raw') as typeof import('hast-util-raw');
  const unparsed = { type: 'root', children: [{ type: 'raw', value: node.value }] };
  visit(raw(unparsed as Root), 'element', ({ tagName, properties }: Element) => {
    if (tagName === 'img' && typeof properties.src === 'string') {
      readPicture(properties.src, node, context);
    }
    if (tagName === 'a' && typeof properties.href === 'string') {
      const file = fileOfAddress(properties.href.replace(/[?#].*$/s, ''));
      if (context.media.has(file)) takeMedia(file, node, context);
    }
  });
}

function readPicture(url: string, node: Html, context: TextContext): void {
  const resolved = resolveMedia(url.trim(), context.source.file, context.media);
  if ('problem' in resolved) {
    context.report({ place: placeOf(node, context), ...resolved.problem });
  } else if (resolved.path !== fileOfAddress(url.trim())) {
    context.report({
      place: placeOf(node, context),
      message: 'HTML names files from the course folder, where the pages will lie.',
      hint: `Write \`src="${fileAddress(resolved.path)}"\`.`,
    });
  } else takeMedia(resolved.path, node, context);
}
