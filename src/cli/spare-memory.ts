import { setFlagsFromString } from 'node:v8';

/** Chapters from which memory matters more than time. */
const longCourse = 500;

/** Per cent of what is in use that garbage may take before it is collected, by what a build does. */
const garbage = {
  // What was read is the least that is ever in use: twice of it is less than all the rest will take.
  reads: 100,
  publishes: 50,
  // Processes that draw need memory beside it.
  draws: 35,
} as const;

/** Limits the memory of a build: 660 MB rather than 750 for a thousand chapters. Call it as each begins. */
export function spareMemory(chapters: number, begins: keyof typeof garbage): void {
  if (chapters < longCourse) return;
  // Reading its files has grown the room for new objects to 32 MB. V8 would take 128 MB, and gain little by it.
  if (begins === 'reads') setFlagsFromString('--semi-space-growth-factor=1');
  setFlagsFromString(`--heap-growing-percent=${garbage[begins]}`);
}
