/**
 * The style of a course on the page of another site: whatever our sheets say holds within `.linewright` alone, and
 * what the site says of elements is taken back there. Made of the same sheets, so that it cannot differ.
 */
import { generate, parse, walk } from 'css-tree';

/** Also before what the site says of its text by classes; nothing has this id. */
const scope = '.linewright:not(#_)';

/** What the pieces and the bare board are made of, once in a page. */
const drawn = /^\.(?:board-(?:paper|tint|rule|coordinate|turn-\w+)|(?:white|black)-piece-\w+)$/;

/** Drawings are styled by attributes, and what is hidden is so by one: `revert` would take that back too. */
const reset = `${scope} :where(:not(svg, svg *, img, [hidden])) { all: revert; }`;

/** @param css of all sheets of a page, in the order of the cascade. */
export function hostSheet(css) {
  const tree = parse(css, { parseAtrulePrelude: false, parseValue: false });
  walk(tree, {
    visit: 'Atrule',
    enter(node, item, list) {
      if (node.name === 'keyframes') return this.skip;
      if (node.name === 'page') list.remove(item);
      return undefined;
    },
  });
  walk(tree, {
    visit: 'Rule',
    enter(node, item, list) {
      if (this.atrule?.name === 'keyframes') return;
      const selectors = node.prelude.children.toArray().flatMap(scoped);
      if (selectors.length === 0) list.remove(item);
      else node.prelude = { type: 'Raw', value: selectors.join(',') };
    },
  });
  return `${reset}\n${byContainer(generate(tree)).replace(/(?<=\d)vw\b/g, 'cqi')}`;
}

/** A selector as it holds within the scope; none for what only a whole page has. */
function scoped(selector) {
  const parts = selector.children.toArray();
  const end = parts.findIndex(({ type }) => type === 'Combinator');
  const [first, rest] = [
    parts.slice(0, end < 0 ? undefined : end),
    end < 0 ? [] : parts.slice(end),
  ];
  const write = (nodes) =>
    nodes.map((node) => (isType(node, 'main') ? '.course-main' : generate(node))).join('');
  const [own, behind] = [write(first), write(rest)];
  // Browsers ask of what a drawing uses only what stands in it, and it stands in no page.
  if (rest.length === 0 && drawn.test(own)) return [own];
  if (/^(?:html|body):has/.test(own)) return [];
  if (/^(?:html|body|:root)$/.test(own)) return [scope + behind];
  if (/^(?:html|:root)/.test(own)) return [`${own} ${scope}${behind}`];
  // The kind of the page, which stands on its body elsewhere.
  if (own === '.contents') return [scope + own + behind];
  return [`${scope} ${own}${behind}`];
}

function isType({ type, name }, element) {
  return type === 'TypeSelector' && name === element;
}

/** Widths are those of the room that the site gives, not of the window. */
function byContainer(css) {
  let made = '';
  let at = 0;
  for (const start of css.matchAll(/@media\s*([^{]+)\{/g)) {
    if (start.index < at || !/width:/.test(start[1])) continue;
    const from = start.index + start[0].length;
    let end = from;
    for (let depth = 1; depth > 0; end++) depth += { '{': 1, '}': -1 }[css[end]] ?? 0;
    const body = css.slice(from, end - 1);
    made += css.slice(at, start.index);
    for (const query of queriesIn(start[1])) made += asContainer(query.trim(), body);
    at = end;
  }
  return made + css.slice(at);
}

/**
 * The queries of a list. One that says where something else does not hold says it of widths and heights together, which
 * no container can be asked: there the narrowest width decides.
 */
function queriesIn(list) {
  if (!list.startsWith('not')) return list.split(',');
  const widths = [...list.matchAll(/min-width:\s*([\d.]+)rem/g)].map(([, width]) => Number(width));
  return [`(max-width: ${Math.min(...widths) - 0.01}rem)`];
}

function asContainer(query, body) {
  const [widths, others] = [true, false].map((isWidth) =>
    query.split(/\s*\band\b\s*/).filter((part) => /width:/.test(part) === isWidth),
  );
  const within = `@container linewright ${widths.join(' and ')}{${body}}`;
  return others.length === 0 ? within : `@media ${others.join(' and ')}{${within}}`;
}
