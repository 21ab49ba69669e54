import { isMap, isNode, isScalar, LineCounter, parseDocument } from 'yaml';
import type { z } from 'zod';
import { nearestName, type Place, type Point } from '../diagnostics/index.ts';

export interface YamlSource {
  readonly file: string;
  readonly text: string;
  /** From an offset in `text` to a point in the file. */
  readonly pointAt: (offset: number) => Point;
  /** What the text is, for messages: `course.yaml`, `the front matter`, `this diagram`. */
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
  readonly problems: readonly YamlProblem[];
  /** Where the value at a path stands, else the whole text's first line. */
  readonly placeOf: (...path: readonly (string | number)[]) => Place;
  /**
   * From an offset in the text at a path to its point in the file. YAML may have folded or
   * unescaped the text; then every offset leads to its beginning.
   */
  readonly locatorOf: (...path: readonly (string | number)[]) => (offset: number) => Point;
}

type Path = readonly (string | number)[];

/**
 * Reads a YAML mapping and tests it against a zod schema; every problem gets the place of the
 * key or value it speaks of. `keys` are the known keys, to suggest one for a slip.
 */
export function readYaml<T>(
  source: YamlSource,
  schema: z.ZodType<T>,
  keys: readonly string[],
): YamlResult<T> {
  const placeOfSpan = (start: number, end: number): Place => ({
    file: source.file,
    start: source.pointAt(start),
    end: source.pointAt(Math.max(start, end)),
  });
  const firstLine = source.text.search(/\r|\n|$/);
  const whole = placeOfSpan(0, firstLine);
  const document = parseDocument(source.text, {
    prettyErrors: false,
    lineCounter: new LineCounter(),
  });
  const placeOf = (...path: Path): Place => {
    const node = document.getIn(path, true);
    return isNode(node) && node.range ? placeOfSpan(node.range[0], node.range[1]) : whole;
  };
  const locatorOf = (...path: Path) => {
    const node = document.getIn(path, true);
    const [start = 0, end = 0] = (isScalar(node) && node.range) || [];
    const written = source.text.slice(start, end);
    const value = isScalar(node) ? String(node.value) : '';
    const shift = written === value ? 0 : written.slice(1, -1) === value ? 1 : undefined;
    return (offset: number) =>
      shift === undefined ? source.pointAt(start) : source.pointAt(start + shift + offset);
  };
  if (document.errors.length > 0) {
    const problems = document.errors.map((error) => ({
      place: placeOfSpan(error.pos[0], error.pos[1]),
      message: `${capital(source.name)} is not valid YAML: ${lowerFirst(error.message)}.`.replace(
        /\.\.$/,
        '.',
      ),
      hint: 'Write one `name: value` a line; put a value that contains `: ` or begins with a sign in quotes.',
    }));
    return { problems, placeOf, locatorOf };
  }
  let data: unknown;
  try {
    data = document.toJS() ?? {};
  } catch (error) {
    const message = `${capital(source.name)} cannot be read: ${String(error instanceof Error ? error.message : error)}.`;
    return {
      problems: [{ place: whole, message, hint: 'Write plain values, without aliases.' }],
      placeOf,
      locatorOf,
    };
  }
  const result = schema.safeParse(data);
  if (result.success) return { value: result.data, problems: [], placeOf, locatorOf };
  const keyPlace = (path: Path, key: string): Place => {
    const map = path.length === 0 ? document.contents : document.getIn(path, true);
    const pair = isMap(map) ? map.items.find((item) => String(item.key) === key) : undefined;
    const node = pair?.key;
    return isNode(node) && node.range ? placeOfSpan(node.range[0], node.range[1]) : whole;
  };
  const problems = result.error.issues.flatMap((issue): YamlProblem[] => {
    const path = issue.path.filter((step) => typeof step !== 'symbol');
    const name = path.join('.');
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => {
        const near = nearestName(key, keys);
        const list = keys.map((known) => `\`${known}\``).join(', ');
        return {
          place: keyPlace(path, key),
          message: `${capital(source.name)} has no \`${[...path, key].join('.')}\`.`,
          hint: near ? `Did you mean \`${near}\`?` : `The names are ${list}.`,
        };
      });
    }
    if (path.length > 0 && document.getIn(path) === undefined) {
      return [
        {
          place: whole,
          message: `${capital(source.name)} has no \`${name}\`, which it needs.`,
          hint: `Add a line \`${name}: …\`${issue.message ? ` (${issue.message})` : ''}.`,
        },
      ];
    }
    return [
      {
        place: placeOf(...path),
        message: name
          ? `\`${name}\` must be ${issue.message}.`
          : `${capital(source.name)} must be ${issue.message}.`,
        hint: `Mend the value of \`${name || source.name}\`.`,
      },
    ];
  });
  return { problems, placeOf, locatorOf };
}

function capital(text: string): string {
  return text.startsWith('course.yaml') ? text : text.charAt(0).toUpperCase() + text.slice(1);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
