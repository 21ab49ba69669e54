import { numberSign, type Position, playSan } from '../../chess/index.ts';
import type { Fix } from '../../diagnostics/index.ts';
import {
  branchPoint,
  type Laid,
  type NewNode,
  type PastEnd,
  type writeBranches,
} from '../../import/index.ts';
import { blockAt, type Course, nodeAt } from '../../model/index.ts';
import { count } from '../console.ts';

export interface Plan {
  readonly fixes: readonly Fix[];
  readonly refused: ReturnType<typeof writeBranches>['refused'];
  /** A chapter for whole games. */
  readonly chapter?: { readonly path: string; readonly text: string };
}

export interface LaidFacts {
  readonly file: string;
  readonly folder: string;
  readonly course: Course;
  readonly laid: Laid;
  readonly plan: Plan;
  readonly isWritten: boolean;
}

/** The report of a PGN file laid against a course, position by position, as text. */
export function reportLaid({ file, folder, course, laid, plan, isWritten }: LaidFacts): string {
  const { branches, against, past, said, played, apart } = laid;
  const refused = new Set(plan.refused.map(({ branch }) => branch));
  const lines = branches.filter((branch) => !refused.has(branch));
  const at = (position: Position, way: string) => `  ${whereOf(course, position)}: ${behind(way)}`;
  const parts = [
    `${count(laid.games, 'game')} of ${file}: ${count(laid.known, 'move')} that ${folder} has already.`,
    ...section(
      `New, ${isWritten ? 'written' : 'to be written'}: ${count(lines.length, 'line')}`,
      lines,
      (each) => [
        at(each.position, each.way),
        `    ${movesOf(each.position, each.root)} ${gamesOf(each.games)}`,
      ],
    ),
    ...section(
      `Against the advice, not written: ${count(against.length, 'move')}`,
      against,
      (each) => [
        at(each.position, each.way),
        `    ${unwritten(each)} ${gamesOf(each.games)}; the course advises ${each.advised.join(' or ')}`,
      ],
    ),
    ...section(
      `Out of scope, not written: ${count(past.length, 'move')}; the course ends here on purpose (\`--past-ends\` takes them)`,
      past,
      (each) => [at(each.position, each.way), `    ${unwritten(each)} ${gamesOf(each.games)}`],
    ),
    ...section(
      `No place can take ${count(plan.refused.length, 'line')}`,
      plan.refused,
      ({ branch, reason }) => [
        at(branch.position, branch.way),
        `    ${movesOf(branch.position, branch.root)} ${gamesOf(branch.games)}: ${reason}`,
      ],
    ),
    ...section(
      `Words at moves that the course has or that stay out, not written: ${said.length}`,
      said,
      (each) => [at(each.position, each.way), `    “${each.text}” ${gamesOf(each.games)}`],
    ),
    ...section(`Whole games: ${played.length}`, played, (each) => [
      `  game ${each.number}: ${each.name}${each.isThere ? ', which the course shows already' : ''}`,
    ]),
    ...section(
      `Beside the subject of the course, not written: ${count(apart.length, 'game')}`,
      apart,
      (each) => [`  game ${each.number}: ${each.name}`],
    ),
  ];
  return `${[...parts, '', lastWords(plan, isWritten)].join('\n')}\n`;
}

function section<Item>(
  title: string,
  items: readonly Item[],
  show: (item: Item) => readonly string[],
): string[] {
  return items.length === 0 ? [] : ['', title, ...items.flatMap(show)];
}

function lastWords({ fixes, chapter }: Plan, isWritten: boolean): string {
  const files = [...fixes.map(({ place }) => place.file), ...(chapter ? [chapter.path] : [])];
  if (files.length === 0) return 'There is nothing to write.';
  const list = files.join(', ');
  if (isWritten) return `Written, with \`:todo\` at each line: ${list}`;
  return `Nothing is written yet: \`--write\` changes ${list}`;
}

function behind(way: string): string {
  return way === '' ? 'at the start' : `after ${way}`;
}

function unwritten({ position, san, rest }: PastEnd): string {
  const played = playSan(position, san);
  const first = played === undefined ? san : `${numberSign(played)}${san}`;
  return rest === '' ? first : `${first} ${rest.replace(/^\d+\.\.\./, '')}`;
}

function gamesOf(games: readonly { readonly number: number }[]): string {
  const numbers = games.map(({ number }) => number);
  return `(${numbers.length === 1 ? 'game' : 'games'} ${numbers.join(', ')})`;
}

/** `chapters/1.md:24` */
function whereOf(course: Course, position: Position): string {
  const place = lineOf(course, position);
  return place === undefined ? 'the course' : `${place.file}:${place.line}`;
}

function lineOf(course: Course, { key }: Position): { file: string; line: number } | undefined {
  const ref = branchPoint(course, key);
  const place = ref && (nodeAt(course, ref)?.written?.place ?? blockAt(course, ref)?.place);
  return place && { file: place.file, line: place.start.line };
}

/** A new line with its alternatives: `6.Bf4 Nf6 (6...c4 7.e3) 7.e3`. */
function movesOf(start: Position, root: NewNode): string {
  const parts: string[] = [];
  let position = start;
  let others: readonly NewNode[] = [];
  let isInterrupted = true;
  for (let node: NewNode | undefined = root; node; ) {
    const played = playSan(position, node.san);
    if (played === undefined) break;
    const isNumbered = isInterrupted || played.color === 'white';
    parts.push(`${isNumbered ? numberSign(played) : ''}${played.san}`);
    for (const other of others) parts.push(`(${movesOf(position, other)})`);
    isInterrupted = others.length > 0;
    const next: NewNode | undefined = node.children[0];
    others = node.children.slice(1);
    position = played.after;
    node = next;
  }
  return parts.join(' ');
}

/** The same as JSON: positions as FEN, places as file and line. */
export function laidAsJson({ file, course, laid, plan, isWritten }: LaidFacts) {
  const at = ({ position, way, games }: Pick<PastEnd, 'position' | 'way' | 'games'>) => {
    const where = lineOf(course, position);
    return { fen: position.fen, way, ...where, games: games.map(({ number }) => number) };
  };
  const refused = new Map(plan.refused.map(({ branch, reason }) => [branch, reason]));
  return {
    file,
    games: laid.games,
    known: laid.known,
    written: isWritten,
    files: [
      ...plan.fixes.map(({ place }) => place.file),
      ...(plan.chapter ? [plan.chapter.path] : []),
    ],
    new: laid.branches.map((branch) => ({
      ...at(branch),
      moves: movesOf(branch.position, branch.root),
      ...(refused.has(branch) && { refused: refused.get(branch) }),
    })),
    against: laid.against.map((each) => ({
      ...at(each),
      move: each.san,
      rest: each.rest,
      advised: each.advised,
    })),
    past: laid.past.map((each) => ({ ...at(each), move: each.san, rest: each.rest })),
    said: laid.said.map((each) => ({ ...at(each), text: each.text })),
    played: laid.played.map(({ number, name, isThere }) => ({ number, name, isThere })),
    apart: laid.apart.map(({ number, name }) => ({ number, name })),
    notes: laid.notes.map(({ game, line, message, text }) => ({ game, line, message, text })),
  };
}
