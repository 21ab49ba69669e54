import type { Nodes } from 'xast';
import { toXml } from 'xast-util-to-xml';

/** What may stand in no XML document (XML 1.0, section 2.2), however it is written. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to be left out.
const forbidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/** Writes an XML document in UTF-8. */
export function writeXml(tree: Nodes): string {
  const declaration = { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="utf-8"' };
  const text = toXml([declaration as Nodes, tree], { closeEmptyElements: true });
  // Text must not contain `]]>` either (2.4), and the library does not escape it.
  return `${text.replace(forbidden, '').replaceAll(']]>', ']]&gt;')}\n`;
}
