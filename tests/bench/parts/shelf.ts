import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { editChapter } from '../courses.ts';
import { makeCourse } from '../make-course.ts';
import { type Cost, cli, measure } from '../measure.ts';
import { heading, row } from '../report.ts';

const courses = 5;
const chapters = 200;

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
    const options = (name: string) => ({
      work,
      cache: path.join(work, `cache-${command}-${name}`),
    });
    const argsOf = (at: string, name: string) => [
      cli,
      command,
      at,
      ...(command === 'build' ? ['--out', path.join(work, `out-${name}`)] : []),
    ];
    const alone = names.map((name) => argsOf(path.join(folder, name), name));
    const whole = argsOf(folder, 'shelf');
    // Each alone in a cache of all, as an author has it.
    const each = alone.map((args) => measure(args, options('alone')));
    const sum = sumOf(each);
    const largest = Math.max(...each.map(({ megabytes }) => megabytes));
    row(`${command}, the five one by one, nothing kept`, sum);
    const fresh = measure(whole, options('shelf'));
    row(`${command}, the shelf, nothing kept`, fresh, [
      { value: fresh.processor / sum.processor, unit: '× the sum', goal: 1 },
      { value: fresh.megabytes / largest, unit: '× the memory of one', goal: 2 },
    ]);
    const first = { folder: path.join(folder, names[0] ?? ''), lines: '' };
    const prepare = () => {
      editChapter(first, chapters);
    };
    const [one = []] = alone;
    const edit = measure(one, { ...options('alone'), runs: 3, prepare });
    row(`${command}, one course after one edit`, edit);
    const again = measure(whole, { ...options('shelf'), runs: 3, prepare });
    row(`${command}, the shelf after one edit`, again, [
      { value: again.processor / edit.processor, unit: '× one course', goal: 1.5 },
    ]);
    for (const name of ['shelf', ...names]) {
      rmSync(path.join(work, `out-${name}`), { recursive: true, force: true });
    }
  }
}

function sumOf(costs: readonly Cost[]): Pick<Cost, 'processor' | 'wall' | 'megabytes'> {
  return {
    processor: costs.reduce((sum, { processor }) => sum + processor, 0),
    wall: costs.reduce((sum, { wall }) => sum + wall, 0),
    megabytes: Math.max(...costs.map(({ megabytes }) => megabytes)),
  };
}
