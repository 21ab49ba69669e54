import path from 'node:path';
import type { Color } from '../chess/index.ts';
import { UserError } from '../diagnostics/index.ts';
import { replaceFile } from '../files/index.ts';
import { type ArrowMeaning, arrowMeanings } from '../model/index.ts';
import { checkOutputFile } from '../output/index.ts';
import {
  type DiagramRequest,
  makeDiagram,
  positionAfter,
  positionOfFen,
  positionOfLabel,
  rasterize,
} from '../publish/diagram/index.ts';
import {
  arrowProblem,
  filesBeside,
  findFiles,
  NoCourseError,
  parseArrow,
  parseList,
  readFrame,
  squareProblem,
} from '../read/index.ts';
import { exitCodes, stderr, stdout } from './console.ts';
import type { formats } from './diagram-command.ts';
import { loadCourse } from './load-course.ts';

type Format = (typeof formats)[number];

export interface DiagramOptions extends Readonly<Partial<Record<ArrowMeaning, string>>> {
  readonly at?: string;
  readonly fen?: string;
  readonly after?: string;
  readonly out: string;
  readonly format?: Format;
  readonly size: number;
  readonly scale?: '1' | '2';
  readonly view?: Color;
  readonly coordinates: boolean;
  readonly mark?: string;
  readonly caption?: string;
  readonly language?: string;
  readonly theme: DiagramRequest['theme'];
  readonly alt: boolean;
}

type Subject = Pick<DiagramRequest, 'position' | 'lastMove' | 'view' | 'language' | 'look'>;

/** `linewright diagram`: one position as a picture file. */
export async function diagram(folder: string, options: DiagramOptions): Promise<number> {
  const format = formatOf(options);
  const drawn = drawnOn(options);
  const subject = await subjectOf(folder, options);
  if (subject === undefined) return exitCodes.findings;
  const { coordinates, caption, theme, size } = options;
  const view = options.view ?? subject.view;
  const language = options.language ?? subject.language;
  const made = await makeDiagram({
    ...subject,
    ...drawn,
    ...{ view, language, coordinates, caption, theme, size },
  });
  for (const loss of made.losses) stderr.print`${loss}\n`;
  const content = format === 'svg' ? made.svg : rasterize(made, size, Number(options.scale ?? 1));
  if (options.out === '-') {
    stdout.writeFile(content);
    if (options.alt) stderr.print`${made.alt}\n`;
  } else {
    await checkOutputFile(options.out, folder);
    await replaceFile(options.out, content);
    stdout.print`${options.out}: ${(content.length / 1000).toFixed(1)} KB\n`;
    if (options.alt) stdout.print`${made.alt}\n`;
  }
  return exitCodes.clean;
}

function formatOf({ out, format, scale }: DiagramOptions): Format {
  const ending = path.extname(out).toLowerCase();
  const told = format ?? (ending === '.png' ? 'png' : ending === '.svg' ? 'svg' : undefined);
  if (told === undefined && out !== '-') {
    throw new UserError(
      `the name ${out} does not tell what kind of picture it is`,
      'end it with .svg or .png, or give `--format`',
    );
  }
  const chosen = told ?? 'svg';
  if (chosen === 'svg' && scale !== undefined) {
    throw new UserError('an SVG has no pixels, so it takes no `--scale`', 'leave it out');
  }
  if (chosen === 'png' && out === '-' && stdout.isTerminal()) {
    throw new UserError('a PNG is nothing to read on a terminal', 'give `--out FILE.png`');
  }
  return chosen;
}

/** Marks and arrows, written as in a chapter. */
function drawnOn(options: DiagramOptions): Pick<DiagramRequest, 'marks' | 'arrows'> {
  const refuse = (option: string, problem: ReturnType<typeof squareProblem>) => {
    if (problem) throw new UserError(`\`--${option}\`: ${problem.message}`, problem.hint);
  };
  if (options.mark !== undefined) refuse('mark', squareProblem(options.mark));
  const arrows = arrowMeanings.flatMap((meaning) => {
    const text = options[meaning];
    if (text === undefined) return [];
    refuse(meaning, arrowProblem(text));
    return parseList(text).map((item) => ({ meaning, ...parseArrow(item) }));
  });
  return { marks: parseList(options.mark ?? ''), arrows };
}

/** The requested position; undefined if its course has errors, which it prints. */
async function subjectOf(
  folder: string,
  { at, fen, after, language }: DiagramOptions,
): Promise<Subject | undefined> {
  const plain = { view: 'white', language: language ?? 'en' } as const;
  if (fen !== undefined) return { ...plain, ...positionOfFen(fen), look: await lookIn(folder) };
  if (after !== undefined) return { ...plain, ...positionAfter(after), look: await lookIn(folder) };
  if (at === undefined) {
    throw new UserError(
      'a diagram needs a position',
      'give `--at LABEL`, `--fen "…"` or `--after "1. d4 d5"`',
    );
  }
  const loaded = await loadCourse(folder);
  if (loaded.checked === undefined) {
    stderr.printFindings(loaded);
    stderr.print`Nothing was drawn: the course has errors.\n`;
    return undefined;
  }
  const { settings, theme } = loaded.course;
  return {
    look: theme?.look,
    view: settings.side === 'black' ? 'black' : 'white',
    language: settings.language,
    ...positionOfLabel(loaded.checked, at),
  };
}

/** The look of the course in a folder, if there is one: a FEN needs no course. */
async function lookIn(folder: string): Promise<DiagramRequest['look']> {
  const files = await findFiles(folder, { lookIntoMedia: false }).catch((error: unknown) => {
    if (error instanceof NoCourseError) return undefined;
    throw error;
  });
  return files && readFrame(files, filesBeside(files)).theme?.look;
}
