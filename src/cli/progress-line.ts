import type { Output } from './console.ts';

const words: Readonly<Record<string, string>> = {
  text: 'writing chapters',
  pages: 'building pages',
  images: 'drawing pictures',
  done: 'done',
};

/** One line on a terminal that tells what is being done; silent where there is no terminal. */
export function createProgressLine({ showProgress, print }: Output) {
  const told = new Set<string>();
  return {
    show(stage: string, done: number, all: number): void {
      const numbers = stage === 'images' ? ` ${bar(done, all)} ${done}/${all}` : '';
      showProgress(`${words[stage] ?? stage}${numbers}`);
    },
    clear(): void {
      showProgress('');
    },
    /** Code of a course may do all that its author may: whoever checks a course of somebody else is to know. */
    runsCode(files: readonly string[]): void {
      const list = files.join(', ');
      if (told.has(list)) return;
      told.add(list);
      showProgress('');
      print`This course brings code, which is run: ${list}.\n`;
    },
  };
}

/** How much is done, twenty signs long. */
function bar(done: number, all: number): string {
  const full = all === 0 ? 0 : Math.floor((20 * done) / all);
  return `[${'='.repeat(full)}${' '.repeat(20 - full)}]`;
}
