import { namesInClaims } from '../check/index.ts';
import { type Place, withinLine } from '../diagnostics/index.ts';
import { type Course, documentsOf, namesWritten, walkText } from '../model/index.ts';
import type { Desk } from './desk.ts';

export interface NameThere {
  readonly name: string;
  /** The name itself; where that cannot be told, all that stands there. */
  readonly written: Place;
  readonly isGiven: boolean;
  /** Whether `written` is the name and nothing else, so that it can be changed. */
  readonly isExact: boolean;
}

/**
 * Every name of a course where it is given and where it is used: chapters, pages, claims, news and settings.
 * @param only of the chapters, pages and news, the one of this path.
 */
export function namesIn(course: Course, desk: Desk, only?: string): NameThere[] {
  const names: Omit<NameThere, 'isExact'>[] = [];
  const isWanted = ({ file }: { readonly file: string }) => only === undefined || file === only;
  for (const chapter of documentsOf(course).filter(isWanted)) {
    names.push(...namesWritten(chapter));
    for (const { name, place } of namesInClaims(chapter)) {
      names.push({ name, written: place, isGiven: false });
    }
  }
  for (const { file, body } of course.news.filter(isWanted)) {
    walkText(body.children, (node) => {
      if (node.type !== 'positionLink') return;
      names.push({ name: node.label, written: { file, ...node.labelRange }, isGiven: false });
    });
  }
  for (const key of ['begins', 'cover'] as const) {
    const name = course.settings[key];
    const place = course.settingPlaces[key];
    if (name !== undefined && place) {
      names.push({ name, written: within(place, name, desk), isGiven: false });
    }
  }
  return names.map((one) => ({ ...one, isExact: desk.textAt(one.written) === one.name }));
}

/** The name in a value of YAML, which may be quoted. */
function within(place: Place, name: string, desk: Desk): Place {
  const at = desk.textAt(place).indexOf(name);
  if (at < 0 || place.start.line !== place.end.line) return place;
  return withinLine(place, at, at + name.length);
}

/** The name that stands at an offset of a file. */
export function nameAt(course: Course, desk: Desk, file: string, offset: number) {
  return namesIn(course, desk, file).find(
    ({ written: { file: there, start, end } }) =>
      there === file && start.offset <= offset && offset <= end.offset,
  );
}
