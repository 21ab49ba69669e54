import { Chess } from 'chessops/chess';
import { makeFen, parseFen } from 'chessops/fen';
import { makeSan, parseSan } from 'chessops/san';
import { withoutControls } from '../../../src/diagnostics/index.ts';
import { type Course, type MoveNode, treesOf } from '../../../src/model/index.ts';
import { misplaced } from '../../../src/model/testing/misplaced.ts';
import type { Files, Oracle } from '../case.ts';
import { type CourseRun, runCourse } from './course-run.ts';

/** What the model says stands in a file stands there, and the model is plain data. */
export const exactModel: Oracle<CourseRun> = {
  name: 'exact model',
  *examine({ files, course }) {
    for (const fault of misplaced(course, asRead(files)))
      yield `something else stands there: ${JSON.stringify(fault)}`;
    const json = JSON.stringify(course);
    if (JSON.stringify(JSON.parse(json)) !== json) yield 'the model does not survive JSON';
  },
};

/** What cannot be printed is read as spaces, which is a finding. */
const asRead = (files: Files): Files =>
  Object.fromEntries(Object.entries(files).map(([file, text]) => [file, withoutControls(text)]));

/** How many moves of a case are played again by another library. */
const mostMoves = 60;

/** Every position is one of chess, and every move legal: chessops (GPL, tests only) is the judge. */
export const legalPositions: Oracle<CourseRun> = {
  name: 'legal positions',
  *examine({ course }) {
    let left = mostMoves;
    for (const nodes of treesIn(course)) {
      for (const node of nodes) {
        const before = nodes[node.parent ?? -1]?.position;
        if (!node.move || !node.position || !before || left-- <= 0) continue;
        const fault = replay(before.fen, node);
        if (fault !== undefined) yield fault;
      }
    }
  },
};

function* treesIn({ chapters }: Course): Generator<readonly MoveNode[]> {
  for (const { blocks } of chapters) for (const block of blocks) yield* treesOf(block);
}

function replay(fen: string, { move, position }: MoveNode): string | undefined {
  const setup = parseFen(fen);
  if (setup.isErr) return `chessops reads no position in ${fen}`;
  const chess = Chess.fromSetup(setup.value);
  if (chess.isErr) return `chessops: ${chess.error.message} in ${fen}`;
  const board = chess.value;
  const san = move?.san ?? '';
  const theirs = parseSan(board, san);
  if (theirs === undefined) return `${san} is no move in ${fen} by chessops`;
  const written = makeSan(board, theirs);
  if (written !== san) return `${san} is ${written} in ${fen} by chessops`;
  board.play(theirs);
  const after = makeFen(board.toSetup());
  return after === position?.fen
    ? undefined
    : `${san} in ${fen} leads to ${after}, not ${position?.fen}`;
}

/** Lines that end as on another system say the same, in the same places. */
export const anyLineEnds: Oracle<CourseRun> = {
  name: 'any line ends',
  *examine({ files, diagnostics }) {
    if (Object.values(files).some((text) => text.includes('\r'))) return;
    const other = Object.fromEntries(
      Object.entries(files).map(([file, text]) => [file, text.replaceAll('\n', '\r\n')]),
    );
    const told = (list: CourseRun['diagnostics']) =>
      list.map(({ rule, severity, place: { file, start, end } }) => {
        return `${severity} ${rule} ${file}:${start.line}:${start.column}-${end.line}:${end.column}`;
      });
    const [ours, theirs] = [told(diagnostics), told(runCourse(other).diagnostics)];
    const missing = ours.find((line) => !theirs.includes(line));
    const added = theirs.find((line) => !ours.includes(line));
    if (missing ?? added)
      yield `with CR LF there is ${added ?? 'nothing'} for ${missing ?? 'nothing'}`;
  },
};
