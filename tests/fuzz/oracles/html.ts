/** What must hold of HTML that a reader's browser is given. parse5 reads as the HTML standard says. */
import { type DefaultTreeAdapterMap, parse, parseFragment } from 'parse5';

type Node = DefaultTreeAdapterMap['childNode'];
type Element = DefaultTreeAdapterMap['element'];

export interface HtmlPart {
  readonly ids: readonly string[];
  /** Addresses of links, and whether the site made them or the author wrote them. */
  readonly links: readonly { readonly href: string; readonly ours: boolean }[];
  /** Ids that attributes speak of. */
  readonly references: readonly string[];
  readonly faults: readonly string[];
}

/** Elements that run, fetch or steer: no text of an author may bring one. */
const forbidden = new Set([
  ...[
    'script',
    'style',
    'iframe',
    'frame',
    'object',
    'embed',
    'applet',
    'base',
    'meta',
    'link',
    'form',
  ],
  ...[
    'title',
    'head',
    'html',
    'body',
    'template',
    'noscript',
    'textarea',
    'select',
    'math',
    'portal',
  ],
]);
/** In a page of its own these are expected. */
const ofPages = new Set(['head', 'html', 'body', 'title', 'meta', 'link', 'script', 'noscript']);

/** Attributes whose address a browser fetches or follows. */
const addressed = new Set([
  ...['src', 'href', 'xlink:href', 'poster', 'data', 'action', 'formaction', 'background', 'cite'],
  ...[
    'longdesc',
    'srcset',
    'imagesrcset',
    'ping',
    'manifest',
    'archive',
    'code',
    'codebase',
    'profile',
    'usemap',
  ],
]);
const followed = new Set(['a', 'area', 'blockquote', 'q', 'del', 'ins']);
const noEnd = new Set([
  'area',
  'br',
  'col',
  'hr',
  'img',
  'input',
  'source',
  'track',
  'wbr',
  'meta',
  'link',
]);
const ownClasses = /\b(?:move|position-link|prose-move|data-footnote-backref|meeting|number)\b/;

/** Reads a page, or what stands within one. */
export function readHtml(html: string, whole = false): HtmlPart {
  const ids: string[] = [];
  const links: { href: string; ours: boolean }[] = [];
  const references: string[] = [];
  const faults: string[] = [];
  const options = {
    sourceCodeLocationInfo: true,
    onParseError: ({ code }: { code: string }) => void faults.push(`HTML: ${code}`),
  };
  const root = whole ? parse(html, options) : parseFragment(html, options);
  const open: Node[] = [...root.childNodes];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if ('childNodes' in node) open.push(...node.childNodes);
    if (!('tagName' in node)) continue;
    faults.push(...faultsOf(node, whole));
    for (const { name, value } of node.attrs) {
      if (name === 'id') ids.push(value);
      if (/^(?:aria-(?:labelledby|describedby|controls|owns)|for)$/.test(name)) {
        references.push(...value.split(/\s+/).filter((id) => id !== ''));
      }
      if (name === 'href' && node.tagName === 'a') {
        const names = node.attrs.find((attribute) => attribute.name === 'class')?.value ?? '';
        links.push({ href: value, ours: ownClasses.test(names) });
      }
    }
  }
  return { ids, links, references, faults };
}

function* faultsOf(node: Element, whole: boolean): Generator<string> {
  const { tagName, attrs, sourceCodeLocation: place } = node;
  if (forbidden.has(tagName) && !(whole && ofPages.has(tagName))) yield `an element <${tagName}>`;
  if (!place?.startTag && !place?.startLine && tagName !== 'tbody')
    yield `<${tagName}> that nobody wrote`;
  const closes = place?.endTag !== undefined || place?.startTag === undefined;
  if (!closes && !noEnd.has(tagName) && node.namespaceURI.endsWith('xhtml')) {
    yield `<${tagName}> is not closed, or not where it stands`;
  }
  for (const { name, value } of attrs) {
    if (/^on/i.test(name)) yield `an attribute ${name}`;
    if (name === 'style' && /url\s*\(|expression|@import|\\/i.test(value)) yield `a style ${value}`;
    if (name === 'srcdoc') yield 'an attribute srcdoc';
    if (addressed.has(name)) yield* addressFaults(tagName, name, value);
  }
}

function* addressFaults(tagName: string, name: string, value: string): Generator<string> {
  // As a browser sees it (URL standard, 4.4): no controls or spaces around, no tabs or breaks within.
  const seen = value.replace(/^[\p{Cc} ]+|[\p{Cc} ]+$/gu, '').replace(/[\t\n\r]/g, '');
  const follows =
    name === 'cite' || name === 'longdesc' || (name === 'href' && followed.has(tagName));
  const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(seen)?.[1]?.toLowerCase();
  if (follows) {
    if (scheme !== undefined && !['http', 'https', 'mailto', 'tel'].includes(scheme)) {
      yield `a link to ${scheme}:`;
    }
    return;
  }
  const local = scheme === undefined ? !/^[\\/]{2}|^[\\/]\t?[\\/]/.test(seen) : scheme === 'data';
  if (!local && !(tagName === 'link' && scheme?.startsWith('http'))) {
    yield `<${tagName} ${name}> fetches ${value.slice(0, 60)}`;
  }
}
