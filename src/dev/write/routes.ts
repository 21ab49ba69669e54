import { fullMoveNumber, numberedSan, playSan } from '../../chess/index.ts';
import type {
  ChangeToWrite,
  LookAnswer,
  LookAsked,
  WriteAnswer,
  WriteAsked,
} from '../../contract/index.ts';
import { EditRefusedError } from '../../edit/index.ts';
import { DeskRefusal, type DeskRoute } from '../desk-door.ts';
import { claimsAfter } from './claims-after.ts';
import { type CourseOnPages, findPlace, type PlaceInCourse, printText } from './find-place.ts';
import { editedText, editsFor } from './make-edits.ts';
import { meetingsOf, refuseTakenNames } from './names-of-course.ts';
import { readLook, readWrite } from './read-asked.ts';
import { type ChapterWriter, chapterWriter } from './write-history.ts';

export interface WritingOptions {
  readonly folder: string;
  /** The course as the pages show it; absent while none could be shown. */
  readonly shown: () => CourseOnPages | undefined;
}

/** The routes by which a chapter's page writes into the chapter: for whoever has passed the door of the desk. */
export function writeRoutes({
  folder,
  shown,
}: WritingOptions): Readonly<Record<string, DeskRoute>> {
  const writer = chapterWriter(folder);
  const current = (): CourseOnPages => {
    const course = shown();
    if (course !== undefined) return course;
    throw new DeskRefusal('The course cannot be read as it stands.', 409);
  };
  return {
    look: async (asked) => look(current(), readLook(asked), writer),
    write: async (asked) => write(current(), readWrite(asked), writer),
    undo: async () => ({ ...(await writer.undo()), history: writer.history }),
    redo: async () => ({ ...(await writer.redo()), history: writer.history }),
  };
}

function look(shown: CourseOnPages, asked: LookAsked, { history }: ChapterWriter): LookAnswer {
  const place = findPlace(shown, asked);
  const { chapter, text, block, node, course } = place;
  const isExercise = block.kind === 'exercise';
  if (block.kind === 'game' && block.file !== chapter.file) {
    throw new DeskRefusal(`This game stands in ${block.file}, and only chapters are written to.`);
  }
  return {
    text: printText(text),
    file: chapter.file,
    line: node?.written?.place.start.line ?? block.place.start.line,
    kind: isExercise ? 'exercise' : 'moves',
    number: node?.position ? fullMoveNumber(node.position) : 1,
    side: course.settings.side,
    next: nextIn(place),
    glyphs: node?.glyphs ?? [],
    drawn: [
      ...(node?.marks ?? []).map((item) => ({ kind: 'mark' as const, item })),
      ...(node?.arrows ?? []).map(({ meaning, from, to }) => ({
        kind: meaning,
        item: `${from}-${to}`,
      })),
    ],
    names: node?.labels ?? [],
    claims: claimsAfter(place, asked.moves.slice(0, asked.shown)),
    meetings: meetingsOf(place, asked.moves),
    history,
  };
}

/** The moves that the block plays here, or the exercise lists, with their numbers: `9...cxd4`. */
function nextIn({ block, node }: PlaceInCourse): string[] {
  const nodes =
    block.kind === 'exercise'
      ? [...block.answer, ...block.also, ...block.wrong].map((line) => line[1])
      : (node?.children ?? []).map((index) => block.nodes[index]);
  return nodes.flatMap((next) =>
    next?.move === undefined ? (next?.written?.san ?? []) : numberedSan(next.move),
  );
}

async function write(
  shown: CourseOnPages,
  asked: WriteAsked,
  writer: ChapterWriter,
): Promise<WriteAnswer> {
  // Another chapter may have changed meanwhile; what counts is this one's text.
  const place = findPlace(shown, { ...asked, version: shown.version });
  const { chapter, text } = place;
  if (asked.text !== printText(text)) {
    throw new DeskRefusal(
      `${chapter.file} was changed meanwhile. Nothing was written; look at the page as it is now.`,
      409,
    );
  }
  refuseTakenNames(place.course, asked.change);
  const { after, line } = refusing(() => {
    const edits = editsFor(place, asked.change);
    const added = movesAdded(place, asked.change);
    return {
      after: editedText(place, edits, added),
      line: Math.min(...edits.map((edit) => edit.place.start.line + leadingLines(edit.text))),
    };
  });
  const { file } = chapter;
  const done = await writer.write({
    file,
    before: text,
    after,
    line,
    what: describe(asked.change),
    from: asked.at,
    to: asked.to ?? asked.at,
  });
  return { ...done, history: writer.history };
}

/** How many moves the block has more then: those that it has already are not written again. */
function movesAdded({ block, node }: PlaceInCourse, change: ChangeToWrite): number {
  if (change.kind === 'answer') return change.moves.length;
  if (change.kind !== 'line') return 0;
  let at = node;
  let known = 0;
  for (const { san } of change.moves) {
    const played = at?.position && playSan(at.position, san)?.san;
    const next = at?.children
      .map((index) => block.nodes[index])
      .find((child) => child?.move?.san === played);
    if (next === undefined) break;
    at = next;
    known++;
  }
  return change.moves.length - known;
}

/** What was written, in a few words: it stands beside the button that takes it back. */
function describe(change: ChangeToWrite): string {
  switch (change.kind) {
    case 'line':
    case 'answer':
      return change.moves.map(({ san }) => san).join(' ');
    case 'words':
      return 'the words';
    case 'glyph':
      return 'the sign';
    case 'draw':
      return change.item;
  }
}

function leadingLines(text: string): number {
  return /^[ \t]*(\r\n|\r|\n)/.test(text) ? 1 : 0;
}

function refusing<T>(act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (!(error instanceof EditRefusedError)) throw error;
    throw new DeskRefusal(`${error.message}: ${error.hint}.`);
  }
}
