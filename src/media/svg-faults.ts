import { SaxesParser, type SaxesTagNS } from 'saxes';
import { findFetches } from './css-faults.ts';
import { isPassiveData } from './passive-data.ts';
import { shorten } from './shorten.ts';
import { drawingElements } from './svg-elements.ts';

/** The namespaces that browsers act on (Infra Standard, "Namespaces"); elements of others are inert. */
const namespaces = {
  html: 'http://www.w3.org/1999/xhtml',
  mathml: 'http://www.w3.org/1998/Math/MathML',
  svg: 'http://www.w3.org/2000/svg',
  xlink: 'http://www.w3.org/1999/xlink',
  xml: 'http://www.w3.org/XML/1998/namespace',
} as const;

/** What an attribute is animated to could be what it must not be. */
const animating = new Set(['animate', 'animateColor', 'animateMotion', 'animateTransform', 'set']);

/** A part of an SVG that keeps it from being published; offsets in its text. */
export interface SvgPart {
  /** Such as "the event handler `onload`". */
  readonly what: string;
  readonly start: number;
  readonly end: number;
}

/**
 * The active parts of an SVG: what a browser that opens it would run or fetch. Whoever opens the file
 * itself has it run with all the rights of the site, and a page that shows it leaves out what it fetches.
 * @param text without a byte order mark
 */
export function findSvgFaults(text: string): SvgPart[] {
  const found: SvgPart[] = [];
  const parser = new SaxesParser({ xmlns: true });
  const add = (what: string, start: number, end: number) => found.push({ what, start, end });
  parser.on('xmldecl', ({ encoding = 'UTF-8' }) => {
    if (!isReadAlike(text, encoding)) add(`the encoding ${encoding}`, 0, parser.position);
  });
  parser.on('doctype', (doctype) => {
    const start = text.lastIndexOf('<!DOCTYPE', parser.position);
    if (doctype.includes('[')) add('entities in its DOCTYPE', start, parser.position);
  });
  parser.on('processinginstruction', ({ target }) => {
    const start = text.lastIndexOf('<?', parser.position);
    add(`the processing instruction \`<?${target}?>\``, start, parser.position);
  });

  let tagStart = 0;
  const attributes = new Map<string, { start: number; end: number }>();
  parser.on('opentagstart', () => {
    tagStart = text.lastIndexOf('<', parser.position - 1);
    attributes.clear();
  });
  parser.on('attribute', ({ name }) => {
    const end = parser.position;
    const quote = text.lastIndexOf(text[end - 1] ?? '"', end - 2);
    attributes.set(name, { start: text.lastIndexOf(name, quote), end });
  });
  let depth = 0;
  let style: { css: string; start: number; end: number } | undefined;
  parser.on('opentag', (tag) => {
    const end = parser.position;
    const whole = { start: tagStart, end };
    if (depth++ === 0 && (tag.local !== 'svg' || tag.uri !== namespaces.svg)) {
      add(`no \`<svg xmlns="${namespaces.svg}">\` at its beginning`, tagStart, end);
    }
    for (const what of faultsOfElement(tag)) add(what, tagStart, end);
    for (const attribute of Object.values(tag.attributes)) {
      const { start, end } = attributes.get(attribute.name) ?? whole;
      for (const what of faultsOfAttribute(attribute, tag)) add(what, start, end);
    }
    if (tag.uri === namespaces.svg && tag.local === 'style') style = { css: '', ...whole };
  });
  const addCss = (css: string) => {
    if (style) style.css += css;
  };
  parser.on('text', addCss);
  parser.on('cdata', addCss);
  parser.on('closetag', () => {
    depth--;
    if (!style) return;
    for (const what of findFetches(style.css))
      add(`${what} in \`<style>\``, style.start, style.end);
    style = undefined;
  });
  let broken = false;
  parser.on('error', ({ message }) => {
    if (broken) return;
    broken = true;
    const at = Math.min(parser.position, text.length);
    add(`text that is no XML (${message.replace(/^\d+:\d+: /, '').replace(/\.$/, '')})`, at, at);
  });
  parser.write(text).close();
  return found;
}

/** Whether a browser that heeds the encoding reads the same letters as are read here, from UTF-8. */
function isReadAlike(text: string, encoding: string): boolean {
  if (/^utf-?8$/i.test(encoding)) return true;
  return /^\p{ASCII}*$/u.test(text) && /^(?:us-ascii|iso-8859-\d+|windows-125\d)$/i.test(encoding);
}

function* faultsOfElement({ name, local, uri }: SaxesTagNS): Generator<string> {
  if (uri === namespaces.html) yield `\`<${name}>\` of HTML`;
  else if (uri === namespaces.mathml) yield `\`<${name}>\` of MathML`;
  else if (uri === namespaces.svg && !drawingElements.has(local)) yield `\`<${name}>\``;
}

type Attribute = SaxesTagNS['attributes'][string];

function* faultsOfAttribute(
  { name, local, uri, value }: Attribute,
  tag: SaxesTagNS,
): Generator<string> {
  const isOwn = uri === '';
  if (isOwn && /^on/i.test(local)) yield `the event handler \`${name}\``;
  else if ((isOwn && local === 'ping') || (uri === namespaces.xml && local === 'base'))
    yield `\`${name}\``;
  else if ((isOwn || uri === namespaces.xlink) && local === 'href') {
    if (!isHarmless(value, tag)) yield `the address ${shorten(value.trim())}`;
  } else if (isOwn && local === 'attributeName' && animating.has(tag.local)) {
    if (/^(?:.*:)?(?:href|on.*|src|style)$/i.test(value.trim())) {
      yield `\`<${tag.name}>\` that changes \`${value.trim()}\``;
    }
  } else if (isOwn && value.includes('(')) yield* findFetches(value);
}

/** Whether an address leads into the file itself, or is a link that a reader follows on purpose. */
function isHarmless(value: string, { local, uri }: SaxesTagNS): boolean {
  const address = value.trim();
  if (address === '' || address.startsWith('#')) return true;
  if (uri !== namespaces.svg) return false;
  if (local === 'a') {
    const base = 'https://course.invalid/';
    return (
      URL.canParse(address, base) && /^(?:https?|mailto):$/.test(new URL(address, base).protocol)
    );
  }
  return ['image', 'feImage'].includes(local) && isPassiveData(address);
}
