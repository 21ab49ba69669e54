import type { CssNode, Declaration as DeclarationNode } from 'css-tree';
import { nearestName } from '../diagnostics/index.ts';
import { cssTree } from './libraries.ts';
import { familiesIn, short } from './read-value.ts';
import { childrenOf, placeOfNode, type ThemeContext } from './theme-context.ts';
import type { Declaration, FontFace, FontFile, FontFormat } from './types.ts';

/** What a rule for a type face may say beside its name and its files (CSS Fonts 4, section 4). */
const others = [
  'font-weight',
  'font-style',
  'font-display',
  'font-stretch',
  'unicode-range',
  'size-adjust',
  'ascent-override',
  'descent-override',
  'line-gap-override',
  'font-feature-settings',
  'font-variation-settings',
] as const;

const fontFormats: Readonly<Record<string, FontFormat>> = {
  '.woff2': 'woff2',
  '.woff': 'woff',
  '.ttf': 'truetype',
  '.otf': 'opentype',
};

/** Reads `@font-face`; reports and leaves out one that cannot be used. */
export function readFace(
  rule: CssNode & { type: 'Atrule' },
  context: ThemeContext,
): FontFace | undefined {
  let family: string | undefined;
  let files: FontFile[] | undefined;
  const said = new Map<string, string>();
  let isSound = true;
  for (const node of childrenOf(rule.block)) {
    if (node.type !== 'Declaration') continue;
    const name = node.property.toLowerCase();
    const text = valueText(node);
    if (name === 'font-family') family = familiesIn(text)[0];
    else if (name === 'src') files = readFiles(node, context);
    else isSound = readOther(node, name, text, context) && isSound;
    if ((others as readonly string[]).includes(name)) said.set(name, text);
  }
  const place = placeOfNode(context, { loc: rule.block?.loc });
  const at = { ...place, start: placeOfNode(context, rule).start };
  if (family === undefined) {
    context.report(
      at,
      'This `@font-face` names no type face.',
      'Write `font-family: "…"` into it.',
    );
  }
  if (files === undefined) {
    context.report(
      at,
      'This `@font-face` names no file.',
      'Write `src: url("media/….woff2")` into it.',
    );
  }
  if (family === undefined || !files?.length || !isSound) return undefined;
  const take = (name: string, otherwise: string) => {
    const value = said.get(name) ?? otherwise;
    said.delete(name);
    return value;
  };
  return {
    family,
    files,
    weight: take('font-weight', '400')
      .replace(/^normal$/i, '400')
      .replace(/^bold$/i, '700'),
    style: take('font-style', 'normal'),
    // Text shows before its face has loaded, as with ours.
    display: take('font-display', 'swap'),
    others: [...said] as Declaration[],
  };
}

function valueText({ value }: DeclarationNode): string {
  return value.type === 'Raw' ? value.value.trim() : cssTree().generate(value);
}

function readOther(
  node: DeclarationNode,
  name: string,
  text: string,
  context: ThemeContext,
): boolean {
  const place = placeOfNode(context, node);
  if (!(others as readonly string[]).includes(name)) {
    const near = nearestName(name, [...others, 'font-family', 'src']);
    context.report(
      place,
      `\`@font-face\` has no \`${short(name)}\`.`,
      near ? `Did you mean \`${near}\`?` : `It may have font-family, src, ${others.join(', ')}.`,
    );
    return false;
  }
  const { error } = cssTree().lexer.matchAtruleDescriptor('font-face', name, node.value);
  if (!error) return true;
  context.report(
    placeOfNode(context, node.value),
    `\`${short(text)}\` is no value of \`${name}\`.`,
    'Look it up in the description of `@font-face`, or leave the line out.',
  );
  return false;
}

/** The files of `src`, in its order; undefined where it names none and nothing was said of that. */
function readFiles(node: DeclarationNode, context: ThemeContext): FontFile[] {
  const urls = childrenOf(node.value).filter((child) => child.type === 'Url');
  if (urls.length === 0) {
    context.report(
      placeOfNode(context, node.value),
      'A type face comes from a file of the course, and this names none.',
      'Put the file into media/ and write `src: url("media/….woff2")`. A face of the reader’s own machine needs no `@font-face`.',
    );
    return [];
  }
  return urls.flatMap((url) => readFontFile(url, context) ?? []);
}

function readFontFile(url: CssNode & { type: 'Url' }, context: ThemeContext): FontFile | undefined {
  const address = url.value;
  const refuse = (message: string, hint: string) => {
    context.report(placeOfNode(context, url), message, hint);
    return undefined;
  };
  const foreign = foreignAddress(address);
  if (foreign) return refuse(foreign.message, foreign.hint);
  const file = address.replace(/^(?:\.\/)+/, '');
  const ending = /\.[^./]*$/.exec(file)?.[0].toLowerCase() ?? '';
  const format = fontFormats[ending];
  if (!context.files.media.has(file)) {
    const near = nearestName(file, context.files.media);
    return refuse(
      `There is no file \`${short(file)}\` in the media/ folder of the course.`,
      near ? `Did you mean \`${near}\`?` : 'Put the file there and name it as `media/….woff2`.',
    );
  }
  if (format === undefined) {
    return refuse(
      `\`${short(file)}\` is no file of a type face.`,
      'Browsers read .woff2, .woff, .ttf and .otf.',
    );
  }
  const fault = context.files.unfit.get(file);
  return fault ? refuse(fault.message, fault.hint) : { file, format };
}

/** Why an address in a theme leads out of the course. */
export function foreignAddress(
  address: string,
): { readonly message: string; readonly hint: string } | undefined {
  if (/^data:/i.test(address)) {
    return {
      message: 'This file stands in its address, and many hosts forbid that.',
      hint: 'Save it in the media/ folder of the course and name that.',
    };
  }
  if (/^[a-z][a-z0-9+.-]*:|^[/\\]{2}/i.test(address)) {
    return {
      message: `\`${short(address)}\` would be fetched from another site.`,
      hint: 'Put a copy into the media/ folder of the course and name that: nothing on a published page may ask another site.',
    };
  }
  if (/^[/\\]|(?:^|[/\\])\.\.(?:[/\\]|$)/.test(address)) {
    return {
      message: `\`${short(address)}\` lies outside the course folder.`,
      hint: 'Put a copy into the media/ folder of the course and name it as `media/…`.',
    };
  }
  return undefined;
}
