import type { Location, Position } from 'vscode-languageserver-protocol';
import { type Course, movesSpokenOf, type NodeRef, standsAt } from '../../model/index.ts';
import { uriOf } from '../addresses.ts';
import type { Asked } from '../asked.ts';
import { moveInText } from '../move-in-text.ts';
import { type NameThere, nameAt, namesIn } from '../names.ts';
import { locationOf, placeOfRef } from '../to-client.ts';

/** Where a name is given, a move of the prose is played, a file of games stands. */
export function definition(asked: Asked, position: Position): Location[] {
  const { desk, file } = asked;
  const course = asked.course();
  if (!course) return [];
  const offset = asked.offsetOf(position);
  const given = placesOfName(asked, offset, course, (one) => one.isGiven);
  if (given) return given;
  const chapter = asked.chapter();
  const here = chapter && standsAt(chapter, offset);
  if (chapter && here?.kind === 'moves-in-text') {
    const at = moveInText(
      here.moves,
      asked.text.slice(here.place.start.offset),
      offset - here.place.start.offset,
    );
    const ref = movesSpokenOf(chapter, here.moves)[at];
    return ref ? placesOf([ref], course, asked) : [];
  }
  if (here?.kind === 'block' && here.block.kind === 'game' && here.block.file !== file) {
    const start = { line: 0, character: 0 };
    return [{ uri: uriOf(desk.fullPath(here.block.file)), range: { start, end: start } }];
  }
  return [];
}

/** Every use of a name; of a move, every place where its position stands. */
export function references(
  asked: Asked,
  position: Position,
  { withDeclaration }: { readonly withDeclaration: boolean },
): Location[] {
  const course = asked.course();
  if (!course) return [];
  const offset = asked.offsetOf(position);
  const uses = placesOfName(asked, offset, course, (one) => withDeclaration || !one.isGiven);
  if (uses) return uses;
  const chapter = asked.chapter();
  const here = chapter && standsAt(chapter, offset);
  const key = here?.kind === 'move' ? here.node.position?.key : undefined;
  return key === undefined ? [] : placesOf(course.graph[key]?.at ?? [], course, asked);
}

/** Where the name stands that stands at an offset; undefined where there is none. */
function placesOfName(
  { desk, session, file }: Asked,
  offset: number,
  course: Course,
  isMeant: (name: NameThere) => boolean,
): Location[] | undefined {
  const here = nameAt(course, desk, file, offset);
  return (
    here &&
    namesIn(course, desk)
      .filter((one) => one.name === here.name && isMeant(one))
      .map(({ written }) => locationOf(written, desk, session))
  );
}

function placesOf(refs: readonly NodeRef[], course: Course, { desk, session }: Asked): Location[] {
  return refs.flatMap((ref) => {
    const place = placeOfRef(ref, course);
    return place ? [locationOf(place, desk, session)] : [];
  });
}
