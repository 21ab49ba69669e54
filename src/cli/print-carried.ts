import { isHostFile } from '../output/index.ts';
import { count, stderr } from './console.ts';

const named = 5;

/** Lists files in the output that no build wrote, except those of hosts and repositories. */
export function printCarried(out: string, carried: readonly string[]): void {
  const paths = carried.filter((path) => !isHostFile(path));
  if (paths.length === 0) return;
  const more = paths.length > named ? ', …' : '';
  const names = paths.slice(0, named).join(', ');
  stderr.print`${out} keeps ${count(paths.length, 'file')} that no build wrote: ${names}${more}\n`;
}
