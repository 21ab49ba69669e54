/**
 * Documents as HTML and as XHTML: the bytes that `hast-util-to-html` and `hast-util-to-xast` give, as a test compares.
 * Those look up the name of each attribute anew and make a pattern for each value: a tenth of the time of a build.
 */
import type { Element, Nodes } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { find, html, type Info } from 'property-information';
import { fitForXml } from './write-xml.ts';

type Value = NonNullable<Element['properties'][string]>;

/** What differs between HTML and XHTML. */
interface Syntax {
  /** What ends the tag of an element without content; nothing where it has an end tag all the same. */
  readonly closing: (tagName: string) => string | undefined;
  /** ` name="value"`; empty where it is not set. */
  readonly attribute: (info: Info, value: Value) => string;
  readonly text: (value: string) => string;
  /** Of what is neither an element nor a text. */
  readonly other: (node: Nodes) => string;
}

/** HTML; a `raw` node stands in it as it is. Elements of SVG have other names: they come as `raw`. */
export function writeHtml(nodes: readonly Nodes[]): string {
  return writeAll(nodes, inHtml);
}

/** The same in pieces; between each two of them, where it stands, an id without its ` id=""`. */
export function writeInPieces(nodes: readonly Nodes[]): string[] {
  // No text of an author has this character (CommonMark, 2.3), and HTML has it in another form.
  return writeAll(nodes, cutAtIds).split('\0');
}

/** Elements and texts as they stand in an XML document. */
export function writeXhtml(nodes: readonly Nodes[]): string {
  return fitForXml(writeAll(nodes, inXml));
}

/** A value as HTML has it between its quotes. */
export function escapeValue(value: string): string {
  return value.replace(/["&'`]/g, reference);
}

function writeAll(nodes: readonly Nodes[], syntax: Syntax): string {
  let written = '';
  for (const node of nodes) {
    if (node.type === 'element') written += writeElement(node, syntax);
    else if (node.type === 'text') written += syntax.text(node.value);
    else written += syntax.other(node);
  }
  return written;
}

function writeElement({ tagName, properties, children }: Element, syntax: Syntax): string {
  let start = `<${tagName}`;
  for (const name in properties) {
    const value = properties[name];
    if (value !== null && value !== undefined) start += syntax.attribute(infoOf(name), value);
  }
  const content = writeAll(children, syntax);
  const closing = content === '' ? syntax.closing(tagName) : undefined;
  return closing === undefined ? `${start}>${content}</${tagName}>` : start + closing;
}

const infos = new Map<string, Info>();

function infoOf(name: string): Info {
  const info = infos.get(name) ?? find(html, name);
  infos.set(name, info);
  return info;
}

/** Elements without an end tag (HTML, 13.1.2). */
const voids = new Set('area base br col embed hr img input link meta source track wbr'.split(' '));

const inHtml: Syntax = {
  closing: (tagName) => (voids.has(tagName) ? '>' : undefined),
  attribute(info, given) {
    const value = asSwitch(info, given);
    if (value === false || Number.isNaN(value)) return '';
    if (value === true) return ` ${info.attribute}`;
    return ` ${info.attribute}="${escapeValue(wordsOf(info, value))}"`;
  },
  text: (value) => value.replace(/[<&]/g, reference),
  other: (node) => toHtml(node, { allowDangerousHtml: true }),
};

const cutAtIds: Syntax = {
  ...inHtml,
  attribute: (info, value) =>
    info.attribute === 'id' ? `\0${escapeValue(String(value))}\0` : inHtml.attribute(info, value),
};

const inXml: Syntax = {
  closing: () => ' />',
  attribute(info, value) {
    if (value === false || Number.isNaN(value) || (info.boolean && !value)) return '';
    const words = value === true || info.boolean ? '' : wordsOf(info, value);
    return ` ${info.attribute}="${words.replace(/["&<]/g, reference)}"`;
  },
  text: (value) => value.replace(/[&<]/g, reference),
  other({ type }) {
    throw new Error(`no ${type} stands in a page of a book`);
  },
};

/** The value of an attribute that is set or not, such as `open`; some can be either that or words. */
function asSwitch({ attribute, boolean, overloadedBoolean }: Info, value: Value): Value {
  if (!boolean && !overloadedBoolean) return value;
  if (value === attribute || (overloadedBoolean && value === '')) return true;
  return typeof value !== 'string' || value === '' ? Boolean(value) : value;
}

function wordsOf({ commaSeparated }: Info, value: Value): string {
  return Array.isArray(value) ? value.join(commaSeparated ? ', ' : ' ').trim() : String(value);
}

function reference(character: string): string {
  return `&#x${character.charCodeAt(0).toString(16).toUpperCase()};`;
}
