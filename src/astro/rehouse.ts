import {
  defaultTreeAdapter,
  parse,
  serializeOuter,
  type DefaultTreeAdapterTypes as Tree,
} from 'parse5';
import { escapeHtml, hostedThemeSheet, isThemeSheet } from '../site/index.ts';

/** What a page of a course is on the page of a site that has a layout of its own. */
export interface HostedPage {
  readonly title: string;
  readonly description?: string;
  /** All that stands in the layout: its style sheets and scripts, its pages, its text and board. */
  readonly html: string;
}

export interface House {
  /** The path that the course is served at: `/club/courses/italian/`. */
  readonly root: string;
  readonly file: string;
  /** Paths in the course of the style sheet and the script that such a page needs beside its own. */
  readonly sheet: string;
  readonly address: string;
}

/** Attributes with the path of a file of the site (`contract/attributes.ts`). */
const paths = new Set([
  ...['href', 'src', 'data-finder', 'data-solver', 'data-keep', 'data-asks', 'data-look'],
  ...['data-settings', 'data-worker', 'data-probe', 'data-exercises'],
]);

/**
 * A page of a course, as it is published, without its own frame: so both are made by one template. Its addresses lead
 * from the site's root, since the host's page may stand a folder deeper.
 */
export function rehouse(page: string, { root, file, sheet, address }: House): HostedPage {
  const document = parse(page);
  const all = [...elementsIn(document)];
  const one = (test: (each: Tree.Element) => boolean) => all.find(test);
  const body = one(({ tagName }) => tagName === 'body');
  const main = one(({ tagName }) => tagName === 'main');
  const html = one(({ tagName }) => tagName === 'html');
  if (!body || !main || !html) throw new Error(`${file} is no page of a course`);
  for (const each of all) leadFromRoot(each, root);
  main.tagName = main.nodeName = 'div';
  addClass(main, 'course-main');
  const own = (name: string) =>
    [...(html.attrs ?? []), ...body.attrs].find((each) => each.name === name)?.value;
  const sprites = body.childNodes.filter((node) => node.nodeName === 'svg');
  const scripts = all.filter(
    ({ tagName, attrs }) => tagName === 'script' && attrs.some(({ name }) => name === 'src'),
  );
  const desk = all.filter(
    (each) => each.tagName === 'link' && /linewright-live/.test(attribute(each, 'href') ?? ''),
  );
  const few = all
    .filter((each) => each.tagName === 'nav' && attribute(each, 'class') === 'few')
    .flatMap((nav) => nav.childNodes);
  const languages = all.filter(
    (each) => each.tagName === 'nav' && attribute(each, 'class') === 'languages',
  );
  const looks = all
    .filter(({ tagName }) => tagName === 'link')
    .flatMap((each) => attribute(each, 'href') ?? [])
    .filter(isThemeSheet);
  const description = one(
    ({ tagName, attrs }) =>
      tagName === 'meta' && attrs.some(({ value }) => value === 'description'),
  );
  const heading = [...elementsIn(main)].find(({ tagName }) => tagName === 'h1');
  const write = (nodes: readonly Tree.ChildNode[]) =>
    nodes.map((node) => serializeOuter(node)).join('');
  const said = description && attribute(description, 'content');
  const title = one(({ tagName }) => tagName === 'title');
  return {
    title: (heading && textOf(heading)) || (title ? textOf(title) : ''),
    ...(said !== undefined && { description: said }),
    html: [
      `<div class="linewright ${own('class') ?? ''}" lang="${own('lang') ?? 'en'}" dir="${own('dir') ?? 'ltr'}" data-course="${escapeHtml(own('data-course') ?? '')}">`,
      `<link rel="stylesheet" href="${root}${sheet}">`,
      ...looks.map((href) => `<link rel="stylesheet" href="${hostedThemeSheet(href)}">`),
      `<script src="${root}${address}" data-page="${escapeHtml(root + (file === 'index.html' ? '' : file))}"></script>`,
      write(desk),
      write(scripts),
      write(sprites),
      `<div class="pages-of-course"><nav>${write(few)}</nav>${write(languages)}</div>`,
      serializeOuter(main),
      '</div>',
    ].join(''),
  };
}

function* elementsIn(parent: Tree.ParentNode): Generator<Tree.Element> {
  for (const node of parent.childNodes) {
    if (!defaultTreeAdapter.isElementNode(node)) continue;
    yield node;
    yield* elementsIn(node);
  }
}

function attribute({ attrs }: Tree.Element, asked: string): string | undefined {
  return attrs.find(({ name }) => name === asked)?.value;
}

function leadFromRoot({ attrs }: Tree.Element, root: string): void {
  for (const each of attrs) {
    if (paths.has(each.name) && /^(?![#/]|[a-z][\w+.-]*:)./i.test(each.value)) {
      each.value = root + each.value.replace(/^index\.html(?=$|[?#])/, '');
    }
  }
}

function addClass({ attrs }: Tree.Element, name: string): void {
  const own = attrs.find((each) => each.name === 'class');
  if (own === undefined) attrs.push({ name: 'class', value: name });
  else own.value += ` ${name}`;
}

function textOf(node: Tree.ParentNode): string {
  return node.childNodes
    .map((child) =>
      defaultTreeAdapter.isTextNode(child)
        ? child.value
        : 'childNodes' in child
          ? textOf(child)
          : '',
    )
    .join('')
    .trim();
}
