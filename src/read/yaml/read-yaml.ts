import type { Text } from 'mdast';
import { type Document, isMap, isNode, isScalar, parseDocument, visit, type YAMLMap } from 'yaml';
import type * as z from 'zod';
import {
  nearestName,
  type Place,
  type Point,
  unprintable,
  withoutControls,
} from '../../diagnostics/index.ts';
import { codeOf } from '../files/clean-text.ts';
import { alignScalar } from './align-scalar.ts';
import { textOfScalar } from './text-of-scalar.ts';
import { valueHint } from './value-hint.ts';
import { explainReference, explainYaml, type YamlFault } from './yaml-fault.ts';
import { findStructureFault } from './yaml-structure.ts';

export interface YamlSource {
  readonly file: string;
  readonly text: string;
  /** From an offset in `text` to a point in the file. */
  readonly pointAt: (offset: number) => Point;
  /** What to call the text in messages: `course.yaml`, `the front matter`, `this diagram`. */
  readonly name: string;
}

export interface YamlProblem {
  readonly place: Place;
  readonly message: string;
  readonly hint: string;
}

export interface YamlResult<T> {
  /** Absent where the text does not satisfy the schema. */
  readonly value?: T;
  /** The valid keys of the value: one wrong setting does not hide the others. */
  readonly sound: Partial<T>;
  readonly problems: readonly YamlProblem[];
  /** The place of the value at a path, else of the first line. */
  readonly placeOf: (...path: Path) => Place;
  /** Whether a path exists. */
  readonly hasKey: (...path: Path) => boolean;
  /** The place of the key at a path. */
  readonly keyPlaceOf: (...path: Path) => Place;
  /** Maps an offset in the text at a path to its point in the file, whatever its YAML style. */
  readonly locatorOf: (...path: Path) => (offset: number) => Point;
  /** The text at a path as nodes with their places. */
  readonly textOf: (...path: Path) => readonly Text[];
}

type Path = readonly (string | number)[];

/** Reads a YAML mapping and validates it with a zod schema. Every problem has the place of its key or value. */
export function readYaml<Schema extends z.ZodObject>(
  source: YamlSource,
  schema: Schema,
): YamlResult<z.output<Schema>> {
  const document = parseDocument(source.text, {
    prettyErrors: false,
    logLevel: 'error',
    uniqueKeys: false,
  });
  const places = createPlaces(source, document);
  const { placeOf, hasKey, keyPlaceOf, locatorOf, textOf } = places;
  const ways = { placeOf, hasKey, keyPlaceOf, locatorOf, textOf };
  const fault = ({ what, hint, start, end }: YamlFault) => ({
    sound: {},
    problems: [
      {
        place: places.span(start, end),
        message: `${capital(source.name)} cannot be read here: ${what}.`,
        hint,
      },
    ],
    ...ways,
  });
  const [error] = document.errors;
  if (error) return fault(explainYaml(error, document, source.text));
  const wrong = findStructureFault(document, source.text);
  if (wrong) return fault(wrong);
  const escapes = takeEscapes(document, source, places);
  let data: unknown;
  try {
    data = document.toJS() ?? {};
  } catch {
    return fault(explainReference(source.text));
  }
  const result = schema.safeParse(data);
  if (result.success) {
    return { value: result.data, sound: result.data, problems: escapes, ...ways };
  }
  const problems = result.error.issues.flatMap((issue) =>
    describeIssue(issue, source, schema, document, places),
  );
  return { sound: soundPart(schema, data), problems: [...escapes, ...problems], ...ways };
}

/** Quoted YAML can contain any character, as `"\e"`: removes and reports unprintable ones. */
function takeEscapes(document: Document, source: YamlSource, { span }: Places): YamlProblem[] {
  const problems: YamlProblem[] = [];
  if (!source.text.includes('\\') && source.text.search(unprintable) < 0) return problems;
  visit(document, {
    Scalar(_key, node) {
      if (typeof node.value !== 'string' || !node.range) return;
      const [found] = node.value.match(unprintable) ?? [];
      if (found === undefined) return;
      node.value = withoutControls(node.value);
      problems.push({
        place: span(node.range[0], node.range[1]),
        message: `${capital(source.name)} has a character that cannot be printed: ${codeOf(found)}.`,
        hint: 'In double quotes a backslash begins a code; leave the code out, or write `\\\\` for a backslash.',
      });
    },
  });
  return problems;
}

function soundPart<Schema extends z.ZodObject>(
  schema: Schema,
  data: unknown,
): Partial<z.output<Schema>> {
  if (typeof data !== 'object' || data === null) return {};
  const sound: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(data)) {
    const field = Object.hasOwn(schema.shape, key) ? schema.shape[key] : undefined;
    const result = field && (field as z.ZodType).safeParse(value);
    if (result?.success) sound[key] = result.data;
  }
  return sound as Partial<z.output<Schema>>;
}

type Places = ReturnType<typeof createPlaces>;

function createPlaces(source: YamlSource, document: Document) {
  const span = (start: number, end: number): Place => {
    const last = source.text.length;
    return {
      file: source.file,
      start: source.pointAt(Math.min(start, last)),
      end: source.pointAt(Math.min(Math.max(start, end), last)),
    };
  };
  const firstLine = span(0, source.text.search(/\r|\n|$/));
  const nodeAt = (path: Path) => {
    const node = document.getIn(path, true);
    return isNode(node) && node.range ? { node, range: node.range } : undefined;
  };
  const scalarAt = (path: Path) => {
    const found = nodeAt(path);
    if (!found || !isScalar(found.node)) return undefined;
    const { node, range } = found;
    const value = String(node.value);
    const written = source.text.slice(range[0], range[1]);
    const offsets = alignScalar(written, value, node.type);
    const pointAt = (offset: number) => source.pointAt(range[0] + offset);
    return { value, written, offsets, pointAt };
  };
  const keys = new WeakMap<YAMLMap, ReadonlyMap<string, unknown>>();
  const keysOf = (map: YAMLMap) => {
    const known = keys.get(map) ?? new Map(map.items.map(({ key }) => [String(key), key]));
    keys.set(map, known);
    return known;
  };
  const keyAt = (whole: Path) => {
    const path = whole.slice(0, -1);
    const key = String(whole.at(-1));
    const map = path.length === 0 ? document.contents : document.getIn(path, true);
    return isMap(map) ? keysOf(map).get(key) : undefined;
  };
  return {
    span,
    firstLine,
    placeOf(...path: Path): Place {
      const found = nodeAt(path);
      return found ? span(found.range[0], found.range[1]) : firstLine;
    },
    hasKey: (...path: Path) => keyAt(path) !== undefined,
    keyPlaceOf(...path: Path): Place {
      const node = keyAt(path);
      return isNode(node) && node.range ? span(node.range[0], node.range[1]) : firstLine;
    },
    locatorOf(...path: Path): (offset: number) => Point {
      const found = scalarAt(path);
      if (!found) return () => firstLine.start;
      const { written, offsets, pointAt } = found;
      return (offset) => pointAt(offsets[offset] ?? written.length);
    },
    textOf(...path: Path): readonly Text[] {
      const found = scalarAt(path);
      return found ? textOfScalar(found.value, found) : [];
    },
  };
}

function describeIssue(
  issue: z.core.$ZodIssue,
  source: YamlSource,
  schema: z.ZodObject,
  document: Document,
  { firstLine, placeOf, keyPlaceOf }: Places,
): YamlProblem[] {
  const path = issue.path.filter((step) => typeof step !== 'symbol');
  const name = path.join('.');
  if (issue.code === 'unrecognized_keys') {
    const keys = keysAt(schema, path);
    return issue.keys.map((key) => {
      const near = nearestName(key, keys);
      const list = keys.map((known) => `\`${known}\``).join(', ');
      return {
        place: keyPlaceOf(...path, key),
        message: `${noSetting(source.name)} \`${[...path, key].join('.')}\`.`,
        hint: near ? `Did you mean \`${near}\`?` : `The names are ${list}.`,
      };
    });
  }
  if (path.length > 0 && !document.hasIn(path)) {
    return [
      {
        place: firstLine,
        message: `${capital(source.name)} has no \`${name}\`, which it needs.`,
        hint: `Add a line \`${name}: …\`${issue.message ? ` (${issue.message})` : ''}.`,
      },
    ];
  }
  if (path.length === 0) {
    return [
      {
        place: firstLine,
        message: `${capital(source.name)} must be ${issue.message}.`,
        hint: 'Begin each line with a name and a colon, such as `title: …`.',
      },
    ];
  }
  const node = document.getIn(path, true);
  const value = isScalar(node) ? node.value : undefined;
  const known = issue.code === 'invalid_value' ? issue.values.map(String) : [];
  const near = typeof value === 'string' ? nearestName(value, known) : undefined;
  const written = isScalar(node) ? (node.source ?? String(node.value)) : '';
  const asText = typeof value === 'number' || typeof value === 'boolean';
  const hint = near
    ? `Did you mean \`${near}\`?`
    : asText && issue.code === 'invalid_type' && issue.expected === 'string'
      ? `To use it as a text, put it in quotes: \`${typeof path.at(-1) === 'number' ? '-' : `${path.at(-1)}:`} "${written}"\`.`
      : typeof path.at(-1) === 'string'
        ? valueHint(String(path.at(-1)), isScalar(node) ? value : node, {
            wanted: issue.message,
            known,
          })
        : itemHint(issue.message, node);
  return [{ place: placeOf(...path), message: `\`${name}\` must be ${issue.message}.`, hint }];
}

/** The keys that a nested mapping may have. */
function keysAt(schema: z.core.$ZodType, path: Path): string[] {
  const { def } = schema._zod;
  if ('innerType' in def) return keysAt(def.innerType as z.core.$ZodType, path);
  if (def.type === 'pipe' && 'in' in def) return keysAt(def.in as z.core.$ZodType, path);
  if (def.type === 'union' && 'options' in def) {
    return (def.options as z.core.$ZodType[]).flatMap((option) => keysAt(option, path));
  }
  if (def.type !== 'object' || !('shape' in def)) return [];
  const shape = def.shape as Readonly<Record<string, z.core.$ZodType>>;
  const [next, ...rest] = path;
  if (next === undefined) return Object.keys(shape);
  const inner = shape[next];
  return inner ? keysAt(inner, rest) : [];
}

function itemHint(wanted: string, written: unknown): string {
  const [only, other] = isMap(written) ? written.items : [];
  if (only && !other && isScalar(only.key) && !(isScalar(only.value) && only.value.value)) {
    return `Take the colon out: \`- ${only.key.value}\`.`;
  }
  const [, sample] = /such as `([^`\n]+)`/.exec(wanted) ?? [];
  return sample === undefined
    ? 'Write it behind the hyphen of its item.'
    : `Write it like this: \`- ${sample}\`.`;
}

/** A message for a key that exists nowhere: `this exercise` has no such setting. */
function noSetting(name: string): string {
  const [, block] = /^this (.*)$/.exec(name) ?? [];
  if (block === undefined) return `${capital(name)} has no`;
  return `${/^[aeiou]/.test(block) ? 'An' : 'A'} ${block} has no setting`;
}

function capital(text: string): string {
  return /^(?:translations\/.+\/course|course|shelf)\.yaml/.test(text)
    ? text
    : text.charAt(0).toUpperCase() + text.slice(1);
}
