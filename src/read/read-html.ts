import { createRequire } from 'node:module';
import type { Element, Root } from 'hast';
import type { Html } from 'mdast';
import { visit } from 'unist-util-visit';
import { resolveMedia } from './resolve-media.ts';
import { placeOf, type TextContext, takeMedia } from './text-context.ts';

const require = createRequire(import.meta.url);

/** Finds the files that HTML in a chapter shows and hands out; a picture that is none is a problem. */
export function readHtml(node: Html, context: TextContext): void {
  if (!/<(?:a|img)\s/i.test(node.value)) return;
  // Few chapters have any, and loading a parser of HTML takes as long as a small check.
  const { raw } = require('hast-util-raw') as typeof import('hast-util-raw');
  const unparsed = { type: 'root', children: [{ type: 'raw', value: node.value }] };
  visit(raw(unparsed as Root), 'element', ({ tagName, properties }: Element) => {
    if (tagName === 'img' && typeof properties.src === 'string') {
      readPicture(properties.src, node, context);
    }
    if (tagName === 'a' && typeof properties.href === 'string') {
      const file = decoded(properties.href.replace(/[?#].*$/s, ''));
      if (context.media.has(file)) takeMedia(file, node, context);
    }
  });
}

function readPicture(url: string, node: Html, context: TextContext): void {
  const resolved = resolveMedia(url.trim(), context.source.file, context.media);
  if ('problem' in resolved) {
    context.report({ place: placeOf(node, context), ...resolved.problem });
  } else if (resolved.path !== decoded(url.trim())) {
    context.report({
      place: placeOf(node, context),
      message: 'HTML names files from the course folder, where the pages will lie.',
      hint: `Write \`src="${encodeURI(resolved.path)}"\`.`,
    });
  } else takeMedia(resolved.path, node, context);
}

function decoded(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
