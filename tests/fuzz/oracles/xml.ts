import { SaxesParser } from 'saxes';

export interface XmlPart {
  readonly ids: readonly string[];
  readonly links: readonly string[];
  readonly faults: readonly string[];
}

/** As the XML standard has it: namespaces declared, characters allowed, elements closed. */
export function readXml(xml: string): XmlPart {
  const faults: string[] = [];
  const ids: string[] = [];
  const links: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', ({ message }) => faults.push(`XML: ${message}`));
  parser.on('opentag', ({ attributes }) => {
    if (attributes.id) ids.push(attributes.id.value);
    if (attributes.href) links.push(attributes.href.value);
  });
  parser.write(xml).close();
  return { ids, links, faults };
}
