import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { editChapter } from '../courses.ts';
import { inTurn, ratio, typical } from '../in-turn.ts';
import { makeCourse } from '../make-course.ts';
import { type Cost, cli, measure } from '../measure.ts';
import { heading, row } from '../report.ts';

const courses = 5;
/** Of each course: what a process costs to start is a small part of what it does. */
const chapters = 60;
const rounds = 3;

/** A shelf of five courses against the five one by one: `check` and `build`, with nothing kept and after one edit. */
export async function benchShelf(work: string): Promise<void> {
  heading(`shelf: ${courses} courses of ${chapters} chapters, against the courses one by one`);
  const folder = path.join(work, 'shelf');
  const names = Array.from({ length: courses }, (_, index) => `made-${index + 1}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'shelf.yaml'), `title: All\ncourses: [${names.join(', ')}]\n`);
  for (const [index, id] of names.entries()) {
    const size = { chapters, movesPerChapter: 50, wordsPerChapter: 1500, seed: index + 1, id };
    await makeCourse(path.join(folder, id), size);
  }
  for (const command of ['check', 'build'] as const) {
    const { each, whole, one, again } = shelfInTurn(command, { work, folder, names });
    row(`${command}, the five one by one, nothing kept`, typical(each));
    row(`${command}, the shelf, nothing kept`, typical(whole), [
      { ...ratio(whole, each), unit: '× the sum', goal: 1 },
      { ...ratio(whole, each, ({ megabytes }) => megabytes), unit: '× the memory of one', goal: 2 },
    ]);
    row(`${command}, one course after one edit`, typical(one));
    row(`${command}, the shelf after one edit`, typical(again), [
      { ...ratio(again, one), unit: '× one course', goal: 1.5 },
    ]);
  }
}

function shelfInTurn(
  command: 'check' | 'build',
  { work, folder, names }: { work: string; folder: string; names: readonly string[] },
) {
  const out = (name: string) => path.join(work, `out-${name}`);
  /** The courses alone have one cache between them, as an author has it. */
  const cacheOf = (name: string) => path.join(work, `cache-${command}-${name}`);
  const run = (at: string, name: string, cache: string) => {
    const args = [cli, command, at, ...(command === 'build' ? ['--out', out(name)] : [])];
    return measure(args, { work, cache });
  };
  const alone = (name: string) => run(path.join(folder, name), name, cacheOf('alone'));
  const shelf = () => run(folder, 'shelf', cacheOf('shelf'));
  const forget = (name: string) => rmSync(cacheOf(name), { recursive: true, force: true });
  const first = names[0] ?? '';
  const edited = (measured: () => Cost) => () => {
    editChapter({ folder: path.join(folder, first) }, chapters);
    return measured();
  };
  const costs = inTurn(rounds, {
    each: () => {
      forget('alone');
      return sumOf(names.map(alone));
    },
    whole: () => {
      forget('shelf');
      return shelf();
    },
    one: edited(() => alone(first)),
    again: edited(shelf),
  });
  for (const name of ['shelf', ...names]) rmSync(out(name), { recursive: true, force: true });
  return costs;
}

function sumOf(costs: readonly Cost[]): Cost {
  const sum = (of: (cost: Cost) => number) => costs.reduce((all, cost) => all + of(cost), 0);
  return {
    processor: sum(({ processor }) => processor),
    whole: undefined,
    wall: sum(({ wall }) => wall),
    megabytes: Math.max(...costs.map(({ megabytes }) => megabytes)),
    output: '',
  };
}
