import type { Output } from './console.ts';

const words: Readonly<Record<string, string>> = {
  text: 'writing chapters',
  pages: 'building pages',
  images: 'drawing pictures',
  done: 'done',
};

/** A line of progress, on a terminal only. */
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
    /** Whoever checks another's course should know that its code runs. */
    runsCode(files: readonly string[]): void {
      const list = files.join(', ');
      if (told.has(list)) return;
      told.add(list);
      showProgress('');
      print`This course brings code, which is run: ${list}.\n`;
    },
  };
}

/** A bar of twenty characters. */
function bar(done: number, all: number): string {
  const full = all === 0 ? 0 : Math.floor((20 * done) / all);
  return `[${'='.repeat(full)}${' '.repeat(20 - full)}]`;
}
