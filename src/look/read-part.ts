import type { CssNode, Declaration as DeclarationNode } from 'css-tree';
import { nearestName } from '../diagnostics/index.ts';
import { type Mode, modes } from './defaults.ts';
import { cssTree } from './libraries.ts';
import {
  harmlessFunctions,
  ornamentDisplays,
  ornamentProperties,
  partProperties,
  pseudos,
} from './part-properties.ts';
import { findPart, parts } from './parts.ts';
import { findProperty } from './properties.ts';
import { foreignAddress } from './read-face.ts';
import { readColour, short } from './read-value.ts';
import { childrenOf, placeOfNode, type ThemeContext } from './theme-context.ts';
import type { Declaration, PartColour, PartCondition, PartRule } from './types.ts';

type RuleNode = CssNode & { readonly type: 'Rule' };

export interface ReadParts {
  readonly rules: readonly PartRule[];
  readonly colours: readonly PartColour[];
}

/** Whether a rule is about parts: any selector of it says so. */
export function isPartRule(rule: RuleNode): boolean {
  return /^::part\(/i.test(cssTree().generate(rule.prelude).trim());
}

/** Reads `::part(name) { … }`. Reports and leaves out what cannot be used. */
export function readPartRule(
  rule: RuleNode,
  when: PartCondition | undefined,
  context: ThemeContext,
): ReadParts {
  const meant = childrenOf(rule.prelude).flatMap(
    (selector) => readSelector(selector, context) ?? [],
  );
  const isOrnament =
    meant.length > 0 && meant.every(({ pseudo }) => /^::(?:before|after)$/.test(pseudo));
  const said = childrenOf(rule.block).flatMap((node): Said[] => {
    if (node.type === 'Declaration') return readDeclaration(node, isOrnament, context);
    context.report(
      placeOfNode(context, node),
      'A rule for a part has no rules within it.',
      'Write each rule by itself.',
    );
    return [];
  });
  const declarations = said.map(({ declaration }) => declaration);
  return {
    rules: meant.map((each) => ({ ...each, ...(when && { when }), declarations })),
    colours: meant.flatMap(({ part }) => coloursOf(part, said, when)),
  };
}

function readSelector(
  selector: CssNode,
  context: ThemeContext,
): { readonly part: string; readonly pseudo: string } | undefined {
  const place = placeOfNode(context, selector);
  const text = cssTree().generate(selector);
  const [, name, pseudo = ''] = /^::part\(\s*([\w-]+)\s*\)(.*)$/s.exec(text) ?? [];
  if (name === undefined || !pseudos.has(pseudo)) {
    context.report(
      place,
      `\`${short(text)}\` is no part of a page.`,
      `Write \`::part(name)\`, alone or with ${[...pseudos]
        .filter((each) => each !== '')
        .map((each) => `\`${each}\``)
        .join(', ')} behind it.`,
    );
    return undefined;
  }
  if (findPart(name) === undefined) {
    const names = parts.map((part) => part.name);
    const near = nearestName(name, names);
    context.report(
      place,
      `There is no part \`${short(name)}\`.`,
      near ? `Did you mean \`::part(${near})\`?` : `The parts are ${names.join(', ')}.`,
    );
    return undefined;
  }
  return { part: name, pseudo };
}

interface Said {
  readonly declaration: Declaration;
  readonly node: { readonly place: PartColour['place'] };
  readonly ink?: string;
  readonly grounds?: readonly string[];
}

function readDeclaration(
  node: DeclarationNode,
  isOrnament: boolean,
  context: ThemeContext,
): Said[] {
  const name = node.property.toLowerCase();
  const place = placeOfNode(context, node);
  const bounds =
    partProperties.get(name) ?? (isOrnament ? ornamentProperties.get(name) : undefined);
  if (bounds === undefined) {
    const near = nearestName(name, partProperties.keys());
    context.report(
      place,
      `A theme may not set \`${short(name)}\` of a part: it could move, hide or cover what a page needs.`,
      near
        ? `Did you mean \`${near}\`?`
        : 'Colours, type, edges and the room around a part may be set.',
    );
    return [];
  }
  const refuse = (message: string, hint: string): Said[] => {
    context.report(placeOfNode(context, node.value), message, hint);
    return [];
  };
  if (node.important) {
    return refuse('`!important` has no use here: a theme comes last.', 'Take it out.');
  }
  if (node.value.type === 'Raw')
    return refuse(`\`${short(node.value.value.trim())}\` cannot be read.`, 'Write a value of CSS.');
  const fault = findFault(name, node.value, bounds, isOrnament);
  if (fault) return refuse(fault.message, fault.hint);
  const value = cssTree().generate(node.value);
  const isText = name === 'color';
  const isGround = /^background(?:-color|-image)?$/.test(name);
  if (!isText && !isGround) return [{ declaration: [name, value], node: { place } }];
  const found: string[] = [];
  for (const text of colourTexts(node.value)) {
    const read = readColour(text);
    if ('message' in read) {
      if (isText || !/^(?:none|0|0 0)$/.test(text)) return refuse(read.message, read.hint);
    } else found.push(read.value);
  }
  return [
    {
      declaration: [name, value],
      node: { place },
      ...(isText && found[0] !== undefined && { ink: found[0] }),
      ...(isGround && { grounds: found }),
    },
  ];
}

/** Each colour in a value as it is written: names, figures, functions and references. */
function colourTexts(value: CssNode): string[] {
  const { generate, lexer, walk } = cssTree();
  const found: string[] = [];
  walk(value, {
    enter(node: CssNode) {
      const isOne =
        node.type === 'Hash' ||
        (node.type === 'Function' && !node.name.endsWith('gradient')) ||
        (node.type === 'Identifier' && lexer.match('<color>', generate(node)).error === null);
      if (!isOne) return undefined;
      found.push(generate(node));
      return walk.skip;
    },
  });
  return found;
}

interface Fault {
  readonly message: string;
  readonly hint: string;
}

/** What is wrong with a value: what it fetches, what it calls, its lengths, its grammar. */
function findFault(
  name: string,
  value: CssNode,
  { least, most }: { readonly least: number; readonly most: number },
  isOrnament: boolean,
): Fault | undefined {
  const { generate, walk } = cssTree();
  const text = generate(value);
  let fault: Fault | undefined;
  walk(value, (node: CssNode) => {
    fault ??= faultOf(node, name, least, most);
  });
  if (fault) return fault;
  if (name === 'content' && !/^(?:none|normal|"[^"]{0,12}"|'[^']{0,12}')$/.test(text)) {
    return {
      message: 'An ornament is a text of at most twelve signs.',
      hint: 'Write `content: ""` or a sign.',
    };
  }
  if (name === 'display' && isOrnament && !ornamentDisplays.has(text)) {
    return {
      message: `\`${short(text)}\` is no way to show an ornament.`,
      hint: `Write ${[...ornamentDisplays].join(', ')}.`,
    };
  }
  return grammarFault(name, text);
}

function faultOf(node: CssNode, name: string, least: number, most: number): Fault | undefined {
  switch (node.type) {
    case 'Url':
      return (
        foreignAddress(node.value) ?? {
          message: 'A part of a page has no picture of a theme: it would be fetched by every page.',
          hint: 'Leave it out; gradients and colours may be used.',
        }
      );
    case 'Function': {
      if (node.name === 'var') return referenceFault(node);
      if (harmlessFunctions.has(node.name.toLowerCase())) return undefined;
      return {
        message: `A theme may not call \`${short(node.name)}()\`.`,
        hint: `It may call ${[...harmlessFunctions].join(', ')}.`,
      };
    }
    case 'Dimension':
    case 'Percentage': {
      const size = sizeOf(node);
      if (size === undefined || (size >= least && size <= most)) return undefined;
      return outOfBounds(name, cssTree().generate(node), least, most);
    }
    case 'Number': {
      const number = Number(node.value);
      const isBound = name === 'line-height' && (number < least || number > most);
      return isBound ? outOfBounds(name, node.value, least, most) : undefined;
    }
    default:
      return undefined;
  }
}

function referenceFault(node: CssNode): Fault | undefined {
  const [first] = childrenOf(node);
  const name = first?.type === 'Identifier' ? first.name.replace(/^--/, '') : '';
  if (findProperty(name) !== undefined) return undefined;
  return {
    message: `There is no property \`--${short(name)}\`.`,
    hint: 'The handbook’s chapter on looks lists all that there are.',
  };
}

/** In root sizes; nothing where it is no length. */
function sizeOf(node: CssNode): number | undefined {
  if (node.type === 'Percentage') return Number(node.value) / 100;
  if (node.type !== 'Dimension') return undefined;
  const perRoot = perRoots[node.unit.toLowerCase()];
  if (perRoot === undefined)
    return /^(?:deg|turn|rad|grad)$/i.test(node.unit) ? undefined : Number.NaN;
  return Number(node.value) / perRoot;
}

const perRoots: Readonly<Record<string, number>> = {
  rem: 1,
  em: 1,
  px: 16,
  pt: 12,
  ch: 2,
  mm: 4.233,
};

function outOfBounds(name: string, text: string, least: number, most: number): Fault {
  const units = Object.keys(perRoots).join(', ');
  return {
    message: `\`${short(text)}\` is out of the bounds of \`${name}\`, where it could break a page.`,
    hint: `Write a length from ${least}rem to ${most}rem, in ${units} or as a percentage.`,
  };
}

/** References count as what they stand for, so that the rest of the value is still held against the grammar. */
function grammarFault(name: string, text: string): Fault | undefined {
  const { lexer, parse } = cssTree();
  const plain = text.replaceAll(/var\(\s*--([\w-]+)\s*\)/g, (_, other: string) => {
    const property = findProperty(other);
    if (property?.type.is === 'faces') return '"Face"';
    return property?.type.is === 'colour'
      ? '#000000'
      : property?.type.is === 'number'
        ? '1'
        : '1rem';
  });
  const { error } = lexer.matchProperty(name, parse(plain, { context: 'value' }));
  if (!error) return undefined;
  return {
    message: `\`${short(text)}\` is no value of \`${name}\`.`,
    hint: 'Write one that CSS knows, or leave the line out.',
  };
}

/** The colours of a rule for a part, in each mode that it holds in. */
function coloursOf(
  part: string,
  said: readonly Said[],
  when: PartCondition | undefined,
): PartColour[] {
  const ink = said.findLast((one) => one.ink !== undefined);
  const ground = said.findLast((one) => one.grounds !== undefined);
  const place = (ink ?? ground)?.node.place;
  if (place === undefined) return [];
  // Without a mode colours are for screens: paper is printed without.
  const inModes: readonly Mode[] = when && 'mode' in when ? [when.mode] : modes.slice(0, 2);
  const grounds = ground?.grounds?.length ? ground.grounds : [undefined];
  return inModes.flatMap((mode) =>
    grounds.map((each) => ({
      part,
      mode,
      ...(ink?.ink !== undefined && { ink: ink.ink }),
      ...(each !== undefined && { ground: each }),
      place,
    })),
  );
}
