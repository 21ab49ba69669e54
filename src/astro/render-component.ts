import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { checkCourse } from '../check/index.ts';
import { describePosition } from '../chess/index.ts';
import { nearestName } from '../diagnostics/index.ts';
import { pieceSprite, stateSprite } from '../draw/index.ts';
import { buildCourse, type Chapter, type Course, type MoveNode, mainLine } from '../model/index.ts';
import { readChapter } from '../read/index.ts';
import {
  assignAddresses,
  chapterDocument,
  contextOf,
  elementsIn,
  pageMedium,
  resolve,
  writeHtml,
} from '../render/index.ts';
import { type Embed, escapeHtml, findEmbeds, hostedWords } from '../site/index.ts';
import type { Strings } from '../strings/index.ts';
import {
  type ComponentName,
  type ComponentProps,
  type ComponentSource,
  propertyNames,
  stringOf,
  writeSource,
} from './component-source.ts';
import { lineThrough, mainLineOf } from './line-of-moves.ts';
import { locateComponent } from './locate-component.ts';
import { siteError } from './site-error.ts';

export interface ComponentSite {
  /** Folder with the pages of the site. */
  readonly sources: string;
  readonly courses: readonly {
    readonly names: readonly string[];
    readonly root: string;
    readonly course: Course;
  }[];
  readonly language: string;
  /** Addresses of what they load. */
  readonly sheet: string;
  readonly script: string;
  readonly line: string;
  readonly solver: string;
}

/** @param isFirst whether no other of its page was rendered: the pieces stand in a page once. */
export function renderComponent(
  name: ComponentName,
  given: ComponentProps,
  site: ComponentSite,
  isFirst: boolean,
): string {
  const fail = (message: string, hint: string, property?: string, at?: number): Error => {
    const value = property === undefined ? undefined : stringOf(given[property]);
    const place = locateComponent(site.sources, name, value, at);
    return siteError(`<${name}>: ${message}`, hint, place);
  };
  for (const each of Object.keys(given)) {
    const known = propertyNames[name];
    if (known.includes(each) || /^(?:class|slot|data-astro)/.test(each)) continue;
    const near = nearestName(each, known);
    throw fail(
      `it has no property \`${each}\``,
      near === undefined ? `it has ${known.join(', ')}` : `did you mean \`${near}\`?`,
    );
  }
  const named = positionNamed(given, site, fail);
  const props = named
    ? { ...given, fen: named.picture.placement, view: given.view ?? named.picture.view }
    : given;
  const source = writeSource(name, props);
  const { course, chapter } = readComponent(source, site, fail);
  const context = { ...contextOf(course), chapter };
  const { strings } = context;
  const head = isFirst ? pieceSprite() + stateSprite() : '';
  const sheet = `<link rel="stylesheet" href="${site.sheet}">`;
  const lang = ` lang="${site.language}"`;
  if (name === 'Board' || name === 'Moves') {
    const board = boardOf(chapter, { named, props, source, strings, fail });
    const script = `<script defer src="${site.line}"></script>`;
    if (name === 'Board') return script + board;
    const text = movesText(chapter, documentOf(), strings);
    return `${sheet}${script}<div class="linewright"${lang}>${head}<div class="course-line-text">${board}<div class="course-line-moves">${toHtml(text)}</div></div></div>`;
  }
  const live = name === 'Exercise';
  const script = live ? `<script defer src="${site.script}"></script>` : '';
  const words = live
    ? ` data-solver="${site.solver}" data-words="${escapeHtml(hostedWords(strings))}"`
    : '';
  const html = writeHtml(documentOf().children);
  return `${sheet}${script}<div class="linewright"${lang} data-course="components">${head}<div class="part-of-course"${words}><article>${html}</article></div></div>`;

  function documentOf(): Root {
    const medium = pageMedium(assignAddresses(course), chapter.file);
    const document = resolve(
      chapterDocument(context),
      { ...medium, numbersDiagrams: false },
      strings,
    );
    // No picture is made of a diagram in a page of the site.
    for (const each of elementsIn(document)) {
      each.children = each.children.filter(
        (child) => child.type !== 'element' || !hasClass(child, 'pictures'),
      );
    }
    return document;
  }
}

type Fail = (message: string, hint: string, property?: string, at?: number) => Error;

/** What the course says of a position by its name. */
function positionNamed(
  given: ComponentProps,
  { courses }: ComponentSite,
  fail: Fail,
): Embed | undefined {
  const label = stringOf(given.at);
  if (label === undefined) return undefined;
  const asked = stringOf(given.course);
  const found = courses.filter(
    ({ names }) => asked === undefined || names.includes(asked.replaceAll(/^[./]+|\/+$/g, '')),
  );
  const [only] = found;
  if (only === undefined || found.length > 1) {
    const all = courses.map(({ names }) => `\`${names[0]}\``).join(', ');
    if (courses.length === 0) {
      throw fail(
        'the site has no course that could have a name',
        'give the course to `linewright()` in astro.config.mjs',
        'at',
      );
    }
    throw fail(
      asked === undefined
        ? 'several courses may have that name'
        : `there is no course \`${asked}\``,
      `\`course\` is one of ${all}`,
      asked === undefined ? 'at' : 'course',
    );
  }
  const embeds = embedsOf(only);
  const embed = embeds.find((each) => each.label === label);
  if (embed !== undefined) return embed;
  const near = nearestName(
    label,
    embeds.map((each) => each.label),
  );
  throw fail(
    `the course has no position named \`${label}\``,
    near === undefined ? 'name it with `:here[…]` in a chapter' : `did you mean \`${near}\`?`,
    'at',
  );
}

const known = new WeakMap<Course, readonly Embed[]>();

function embedsOf({ course, root }: ComponentSite['courses'][number]): readonly Embed[] {
  const found = known.get(course) ?? embedsAnew();
  known.set(course, found);
  return found;

  function embedsAnew() {
    const addresses = assignAddresses(course);
    const href: typeof addresses.href = (ref) => root + addresses.href(ref);
    return findEmbeds(course, { ...addresses, href }, contextOf(course).strings);
  }
}

/** What a whole course must have, and one component need not. */
const ofCourses = new Set([
  'reply-unanswered',
  'transposition-untold',
  'advice-conflict',
  'line-repeated',
  'todo-open',
]);

function readComponent({ text, from }: ComponentSource, { language }: ComponentSite, fail: Fail) {
  const file = 'chapters/component.md';
  const syntax = readChapter({ path: file, text }, { media: new Set(), frontMatter: 'optional' });
  const course = buildCourse({
    settings: {
      title: 'A component',
      side: 'both',
      language,
      rules: {},
      ownRules: [],
      notation: 'letters',
    },
    settingPlaces: {},
    chapters: [syntax],
    problems: [],
  });
  const wrong = checkCourse(course).diagnostics.filter(
    ({ rule, severity }) => severity === 'error' && !ofCourses.has(rule),
  );
  const [first] = wrong;
  if (first !== undefined) {
    const where = from(first.place.start.offset);
    const more = wrong.length === 1 ? '' : ` (${wrong.length} errors in all)`;
    throw fail(
      first.message + more,
      first.hint ?? `the rule is \`${first.rule}\``,
      where?.name,
      where?.at,
    );
  }
  const [chapter] = course.chapters;
  if (chapter === undefined) throw new Error('a component is a chapter');
  return { course, chapter };
}

interface BoardParts {
  readonly named: Embed | undefined;
  readonly props: ComponentProps;
  readonly source: ComponentSource;
  readonly strings: Strings;
  readonly fail: Fail;
}

function boardOf(chapter: Chapter, { named, props, source, strings, fail }: BoardParts): string {
  const hasMoves = stringOf(props.moves) !== undefined || stringOf(props.after) !== undefined;
  // Of a named position the line that it stands in, unless other moves are given.
  if (named && !hasMoves) return elementOf({ ...named.attributes, href: named.href }, named.alt);
  const [block] = chapter.blocks;
  if (block?.kind !== 'moves')
    throw fail('its moves cannot be read', 'give `moves` as a PGN file has them', 'moves');
  const line = mainLine(block.nodes).slice(1);
  const isBefore = ({ written }: MoveNode) =>
    written && source.from(written.place.start.offset)?.name === 'after';
  const begins = { start: line.filter(isBefore).length, end: line.length };
  const { show = 'start' } = props;
  const at = show === 'start' || show === 'end' ? begins[show] : begins.start + Number(show);
  if (!Number.isInteger(at) || at < 0 || at > line.length) {
    throw fail(
      `\`show\` is ${String(show)}`,
      `it is \`start\`, \`end\`, or how many of the ${line.length} moves are played`,
    );
  }
  const shown = line[at - 1]?.position ?? block.nodes[0]?.position;
  return elementOf(
    mainLineOf(block.nodes, { at, view: block.view, strings }),
    shown ? describePosition(shown, strings.position) : '',
  );
}

function elementOf(attributes: Readonly<Record<string, string>>, alt: string): string {
  const written = Object.entries(attributes).map(
    ([name, value]) => ` ${name}="${escapeHtml(value)}"`,
  );
  return `<course-line${written.join('')}><span hidden>${escapeHtml(alt)}</span></course-line>`;
}

/** The moves as text, each with the line that its board shows for it. */
function movesText(chapter: Chapter, tree: Root, strings: Strings): Root {
  const [block] = chapter.blocks;
  if (block?.kind !== 'moves') return tree;
  const moves = block.nodes.filter(({ move }) => move !== undefined);
  const elements = [...elementsIn(tree)];
  const shown = elements.filter(isMove);
  for (const element of elements) delete element.properties.id;
  for (const [index, element] of shown.entries()) {
    const node = moves[index];
    if (node === undefined) continue;
    const line = lineThrough(block.nodes, node, strings);
    Object.assign(element.properties, {
      role: 'button',
      tabIndex: 0,
      dataLineMoves: line.moves,
      dataLineSans: line.sans,
      dataLineAt: line.at,
    });
  }
  return tree;
}

function isMove(element: Element): boolean {
  return element.tagName === 'a' && hasClass(element, 'move');
}

function hasClass({ properties }: Element, name: string): boolean {
  const names = [properties.className ?? properties.class ?? []].flat().join(' ');
  return names.split(' ').includes(name);
}
