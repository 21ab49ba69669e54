/** Loaded for the first exercise that a reader comes near: each is then answered on its board or by typing. */
import { onExercise } from './begin.ts';
import { makeWay } from './make-way.ts';
import { readExercise } from './read-exercise.ts';
import { solve } from './solve.ts';

const begun = new WeakSet<HTMLElement>();
const makesWay = makeWay();

onExercise((section) => {
  if (begun.has(section)) return;
  begun.add(section);
  const exercise = readExercise(section);
  if (exercise === undefined) return;
  solve(section, exercise);
  makesWay(exercise.board);
});
