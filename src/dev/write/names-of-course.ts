import { playSan } from '../../chess/index.ts';
import type { ChangeToWrite, NamedMeeting } from '../../contract/index.ts';
import { type Course, documentsOf, firstNames, type GivenName } from '../../model/index.ts';
import type { PlaceInCourse } from './find-place.ts';
import { refusedName } from './refused-name.ts';

/** A name stands once in a course: a page with it twice would have two places for one link. */
export function refuseTakenNames(course: Course, change: ChangeToWrite): void {
  const given = firstNames(documentsOf(course));
  const fresh = new Set<string>();
  for (const name of namesGiven(change)) {
    const taken = given.get(name);
    if (taken !== undefined) {
      const { file, start } = taken.place;
      throw refusedName(
        `The name “${name}” is taken: it stands in ${file}, line ${start.line}. Choose another.`,
      );
    }
    if (fresh.has(name)) {
      throw refusedName(`Two positions cannot both be “${name}”. Choose another name for one.`);
    }
    fresh.add(name);
  }
}

function namesGiven(change: ChangeToWrite): string[] {
  const said = change.kind === 'words' ? [change] : 'moves' in change ? change.moves : [];
  return said.flatMap(({ name }) => name || []);
}

/** Where moves from a place on come to positions that the course has under a name. */
export function meetingsOf(
  { course, node }: PlaceInCourse,
  moves: readonly string[],
): NamedMeeting[] {
  const named = new Map<string, GivenName>();
  for (const name of firstNames(documentsOf(course)).values()) {
    const key = name.position?.key;
    if (key !== undefined && !named.has(key)) named.set(key, name);
  }
  const meetings: NamedMeeting[] = [];
  let position = node?.position;
  for (const [index, san] of moves.entries()) {
    position = position && playSan(position, san)?.after;
    const known = position && named.get(position.key);
    if (known === undefined) continue;
    const { name, place } = known;
    meetings.push({ after: index + 1, name, file: place.file, line: place.start.line });
  }
  return meetings;
}
