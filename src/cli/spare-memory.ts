import { getHeapSpaceStatistics, setFlagsFromString } from 'node:v8';

/** Chapters from which memory matters more than time. */
const longCourse = 500;

/** Per cent of what is in use that garbage may take before it is collected. */
const garbage = {
  alone: 50,
  // Processes that draw need memory beside the build.
  besideDrawing: 35,
} as const;

/** Limits the memory of a build: 680 MB rather than 750 for a thousand chapters. Call it as each state begins. */
export function spareMemory(chapters: number, state: keyof typeof garbage): void {
  if (chapters < longCourse) return;
  keepRoom(chapters);
  setFlagsFromString(`--heap-growing-percent=${garbage[state]}`);
}

/** Bytes that V8 may take for new objects. It would take 128 MB, and gain little by it. */
const room = 2 ** 25;

/**
 * Lets the room for new objects grow so far and no farther. Call it at each step of a build: on a machine busy with other
 * work V8 shrinks that room to 1 MB, in which a build takes up to twice the time.
 */
export function keepRoom(chapters: number): void {
  if (chapters < longCourse) return;
  const now = getHeapSpaceStatistics().find(({ space_name: name }) => name === 'new_space');
  const grows = now !== undefined && now.space_size < room;
  setFlagsFromString(`--semi-space-growth-factor=${grows ? 2 : 1}`);
}
