import type { CssNode, Declaration as DeclarationNode } from 'css-tree';
import { nearestName } from '../diagnostics/index.ts';
import type { ColourName, MeasureName, Mode } from './defaults.ts';
import { isColour } from './effective.ts';
import { cssTree } from './libraries.ts';
import { findProperty, properties } from './properties.ts';
import { readFace } from './read-face.ts';
import { isPartRule, readPartRule } from './read-part.ts';
import { familiesIn, readValue, short } from './read-value.ts';
import { resolveReferences } from './resolve-references.ts';
import {
  childrenOf,
  makeContext,
  placeOfNode,
  type ThemeContext,
  type ThemeFiles,
} from './theme-context.ts';
import {
  type FontFace,
  type PartColour,
  type PartCondition,
  type PartRule,
  placeKey,
  type ThemeProblem,
  type ThemeSyntax,
} from './types.ts';

interface Gathered {
  readonly colours: Record<Mode, Partial<Record<ColourName, string>>>;
  readonly measures: Record<'screen' | 'print', Partial<Record<MeasureName, string>>>;
  readonly faces: FontFace[];
  readonly parts: PartRule[];
  readonly partColours: PartColour[];
  readonly places: Record<string, ThemeProblem['place']>;
}

/**
 * Reads `theme.css`: values of known properties, type faces from `media/`, rules for named parts. Reports and leaves
 * out all else.
 */
export function readTheme(
  file: { readonly path: string; readonly text: string },
  files: ThemeFiles,
): ThemeSyntax {
  const problems: ThemeProblem[] = [];
  const context = makeContext(file, files, problems);
  const gathered: Gathered = {
    colours: { light: {}, dark: {}, print: {} },
    measures: { screen: {}, print: {} },
    faces: [],
    parts: [],
    partColours: [],
    places: {},
  };
  const tree = parseSheet(context);
  for (const node of childrenOf(tree)) readNode(node, undefined, gathered, context);
  const { colours, measures, faces, parts, partColours, places } = gathered;
  resolveReferences(colours, (name, mode) => {
    const place = places[placeKey(name, mode)];
    if (place === undefined) return;
    context.report(
      place,
      `\`--${name}\` is said by itself, in a circle.`,
      'Write a colour, such as `#74211b`.',
    );
  });
  tellMisspelt(gathered, context);
  return { look: { colours, measures, faces, parts }, places, partColours, problems };
}

/** A misspelt type face falls back to the next of the list, which is easily overlooked. */
function tellMisspelt({ faces, measures, places }: Gathered, context: ThemeContext): void {
  const own = [...new Set(faces.map(({ family }) => family))];
  const isOwn = (name: string) => own.some((each) => each.toLowerCase() === name.toLowerCase());
  for (const where of ['screen', 'print'] as const) {
    for (const name of ['text-face', 'title-face', 'code-face'] as const) {
      const families = familiesIn(measures[where][name] ?? '');
      const place = places[placeKey(name, where)];
      // Behind the theme's own others may be named that are much like it.
      if (place === undefined || families.some(isOwn)) continue;
      for (const family of families) {
        const near = nearestName(family, own);
        if (near === undefined) continue;
        context.report(
          place,
          `\`--${name}\` names “${short(family)}”, which no \`@font-face\` brings in.`,
          `Did you mean “${short(near)}”?`,
        );
        break;
      }
    }
  }
}

/** Parses the file. Reports only the first fault of syntax: later ones follow from it. */
function parseSheet(context: ThemeContext): CssNode {
  let isTold = false;
  return cssTree().parse(context.text, {
    positions: true,
    onParseError(error) {
      if (isTold) return;
      isTold = true;
      const { offset = 0, line = 1 } = error as { offset?: number; line?: number };
      const at = Math.min(offset, context.text.length);
      context.report(
        context.placeOf(at, at),
        `This is no CSS from here on (line ${line}): ${lowerFirst(error.message)}.`,
        'A theme is a style sheet: `:root { --accent: #74211b; }`. What cannot be read is left out.',
      );
    },
  });
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function readNode(
  node: CssNode,
  when: PartCondition | undefined,
  gathered: Gathered,
  context: ThemeContext,
): void {
  if (node.type === 'Rule') readRule(node, when, gathered, context);
  else if (node.type === 'Atrule') readAtRule(node, when, gathered, context);
}

function readRule(
  rule: CssNode & { type: 'Rule' },
  when: PartCondition | undefined,
  gathered: Gathered,
  context: ThemeContext,
): void {
  if (isPartRule(rule)) {
    const { rules, colours } = readPartRule(rule, when, context);
    gathered.parts.push(...rules);
    gathered.partColours.push(...colours);
    return;
  }
  const selector =
    rule.prelude.type === 'Raw' ? rule.prelude.value.trim() : cssTree().generate(rule.prelude);
  if (selector !== ':root') {
    context.report(
      placeOfNode(context, rule.prelude),
      `\`${short(selector)}\` is not for a theme: it would change whatever a page is made of.`,
      'Set properties under `:root`, and give rules to parts by `::part(name)`.',
    );
    return;
  }
  if (when !== undefined && 'width' in when) {
    context.report(
      placeOfNode(context, rule.prelude),
      'Properties are the same in wide and narrow windows.',
      'Set them outside of this `@media`; rules for parts may stand in it.',
    );
    return;
  }
  for (const node of childrenOf(rule.block)) {
    if (node.type === 'Declaration') readProperty(node, when?.mode, gathered, context);
    else if (node.type !== 'Raw') {
      context.report(
        placeOfNode(context, node),
        '`:root` has no rules within it.',
        'Close it with `}` before the next rule.',
      );
    }
  }
}

function readProperty(
  node: DeclarationNode,
  mode: Mode | undefined,
  { colours, measures, places }: Gathered,
  context: ThemeContext,
): void {
  const place = placeOfNode(context, node);
  const property = findProperty(node.property.replace(/^--/, ''));
  if (!node.property.startsWith('--') || property === undefined) {
    const near = nearestName(
      node.property.replace(/^-*/, ''),
      properties.map(({ name }) => name),
    );
    context.report(
      { ...place, end: context.placeOf(0, place.start.offset + node.property.length).end },
      `A theme has no property \`${short(node.property)}\`.`,
      near
        ? `Did you mean \`--${near}\`?`
        : 'The handbook’s chapter on looks lists all that there are.',
    );
    return;
  }
  const { name } = property;
  const valuePlace = placeOfNode(context, node.value);
  if (node.important) {
    context.report(place, '`!important` has no use here: a theme comes last.', 'Take it out.');
    return;
  }
  const text = node.value.type === 'Raw' ? node.value.value.trim() : cssTree().generate(node.value);
  const read = /\burl\s*\(|@import/i.test(text) ? fetching() : readValue(property, text);
  if ('message' in read) {
    context.report(valuePlace, read.message, read.hint);
    return;
  }
  if (mode !== undefined && !property.modes.includes(mode)) {
    context.report(place, ...uselessIn(name, mode));
    return;
  }
  if (isColour(name)) {
    colours[mode ?? 'light'][name] = read.value;
    places[placeKey(name, mode ?? 'light')] = place;
  } else if (mode === 'dark') {
    context.report(
      place,
      `\`--${name}\` is the same on light and dark screens.`,
      'Set it under `:root`, outside of `@media`.',
    );
  } else {
    const where = mode === 'print' ? 'print' : 'screen';
    measures[where][name as MeasureName] = read.value;
    places[placeKey(name, where)] = place;
  }
}

function fetching() {
  return {
    message: 'A property holds no address: nothing is fetched for it.',
    hint: 'A type face comes in by `@font-face`; logo, icon and card are settings of course.yaml.',
  };
}

function uselessIn(name: string, mode: Mode): [message: string, hint: string] {
  return [
    `\`--${name}\` has no use ${mode === 'print' ? 'on paper, which is printed without grounds' : `in the mode ${mode}`}.`,
    'Leave the line out.',
  ];
}

function readAtRule(
  node: CssNode & { type: 'Atrule' },
  when: PartCondition | undefined,
  gathered: Gathered,
  context: ThemeContext,
): void {
  const name = node.name.toLowerCase();
  const place = context.placeOf(
    node.loc?.start.offset ?? 0,
    node.prelude?.loc?.end.offset ?? (node.loc?.start.offset ?? 0) + name.length + 1,
  );
  const refuse = (message: string, hint: string) => context.report(place, message, hint);
  if (name === 'charset') return;
  if (name === 'font-face' && when === undefined) {
    const face = readFace(node, context);
    if (face) gathered.faces.push(face);
  } else if (name === 'media') {
    const query = node.prelude ? cssTree().generate(node.prelude) : '';
    const inner = when === undefined ? conditionOf(query) : undefined;
    if (inner === undefined) {
      refuse(
        `A theme does not ask for \`${short(query)}\`.`,
        'It asks for `(prefers-color-scheme: dark)`, for `print`, and for `(min-width: …)` or `(max-width: …)`, not one within another.',
      );
      return;
    }
    for (const child of childrenOf(node.block)) readNode(child, inner, gathered, context);
  } else if (name === 'import') {
    refuse(
      'A theme is one file: `@import` would fetch another.',
      'Copy what you need from it into theme.css.',
    );
  } else {
    refuse(
      `A theme has no \`@${short(name)}\`${when === undefined ? '' : ' within `@media`'}.`,
      'It may have `@font-face` and `@media`.',
    );
  }
}

/** What a media query means to a theme; a reader's own choice of light or dark counts as the system's. */
function conditionOf(query: string): PartCondition | undefined {
  const plain = query.toLowerCase().replaceAll(/\s+/g, '');
  if (plain === '(prefers-color-scheme:dark)') return { mode: 'dark' };
  if (plain === '(prefers-color-scheme:light)') return { mode: 'light' };
  if (plain === 'print') return { mode: 'print' };
  const [, edge, size] = /^\((min|max)-width:(\d+(?:\.\d+)?(?:rem|em|px))\)$/.exec(plain) ?? [];
  return size === undefined ? undefined : { width: `(${edge}-width: ${size})` };
}
