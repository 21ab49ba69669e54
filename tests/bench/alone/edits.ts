/** Edits chapters in memory and finds all findings anew, 500 times, in one process; prints JSON. */
import { openCourseFiles } from '../open-course-files.ts';

const { gc } = globalThis;
if (gc === undefined) throw new Error('give --expose-gc');
const { files, update } = await openCourseFiles(process.argv[2] ?? '');
update(files);
const costs: number[] = [];
const memory: number[] = [];
for (let edit = 1; edit <= 500; edit += 1) {
  const at = (edit * 37) % files.chapters.length;
  const chapters = files.chapters.map((chapter, index) =>
    index === at ? { ...chapter, text: `${chapter.text}\nEdit ${edit}.\n` } : chapter,
  );
  const before = process.cpuUsage();
  update({ ...files, chapters });
  const { user, system } = process.cpuUsage(before);
  costs.push((user + system) / 1e6);
  if (edit === 20 || edit === 500) {
    gc();
    memory.push(process.memoryUsage().heapUsed / 2 ** 20);
  }
}
console.log(JSON.stringify({ costs, memory }));
