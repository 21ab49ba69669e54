import { isHostFile } from '../output/index.ts';
import { count, stderr } from './console.ts';

/** So many paths are named; who put them there knows the rest. */
const named = 5;

/** Says what an output keeps that no build wrote, but for what hosts and repositories keep there. */
export function printCarried(out: string, carried: readonly string[]): void {
  const paths = carried.filter((path) => !isHostFile(path));
  if (paths.length === 0) return;
  const more = paths.length > named ? ', …' : '';
  const names = paths.slice(0, named).join(', ');
  stderr.print`${out} keeps ${count(paths.length, 'file')} that no build wrote: ${names}${more}\n`;
}
