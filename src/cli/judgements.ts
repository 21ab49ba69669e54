import { jsonVersion, writeJson } from '../diagnostics/index.ts';
import {
  type Course,
  documentsOf,
  type Judgement,
  judgementsOf,
  nameAt,
  nodeAt,
} from '../model/index.ts';
import { command } from './called-as.ts';
import { count, exitCodes, type Output, stderr, stdout } from './console.ts';
import { loadCourse } from './load-course.ts';

/** `linewright check --judgements`: lists what the author judges and no board decides, in the order of the course. */
export async function listJudgements(folder: string, format: 'text' | 'json'): Promise<number> {
  const { course, diagnostics } = await loadCourse(folder);
  const all = documentsOf(course).flatMap(judgementsOf);
  if (format === 'json') {
    stdout.printLines(
      writeJson({
        version: jsonVersion,
        judgements: all.map((each) => judgementData(each, course)),
      }),
    );
  } else {
    for (const each of all) printJudgement(stdout, each, course);
    stdout.print`${count(all.length, 'judgement')}.\n`;
  }
  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  if (errors === 0) return exitCodes.clean;
  stderr.print`The course has ${count(errors, 'error')}, which \`${command('check', folder)}\` tells.\n`;
  return exitCodes.findings;
}

export function printJudgement(
  to: Output,
  { place, date, text, of }: Judgement,
  course: Course,
): void {
  const { line, column } = place.start;
  const after = of && nameAt(course, of);
  const where = after === undefined ? '' : `  after ${after}`;
  to.print`${place.file}:${line}:${column}  ${date ?? 'no date'}${where}\n  ${text}\n`;
}

export function judgementData({ place, date, text, of }: Judgement, course: Course) {
  const { file, start, end } = place;
  const after = of && nameAt(course, of);
  const fen = of && nodeAt(course, of)?.position?.fen;
  return {
    file,
    start: { line: start.line, column: start.column },
    end: { line: end.line, column: end.column },
    ...(date === undefined ? {} : { date }),
    text,
    ...(after === undefined ? {} : { after }),
    ...(fen === undefined ? {} : { fen }),
  };
}
