import { homedir } from 'node:os';
import path from 'node:path';

/** The folder of what is kept between runs, in the user's cache. */
export function cacheFolder(): string {
  const { LINEWRIGHT_CACHE, XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  if (LINEWRIGHT_CACHE) return LINEWRIGHT_CACHE;
  if (process.platform === 'win32' && LOCALAPPDATA) return path.join(LOCALAPPDATA, 'linewright');
  if (process.platform === 'darwin') return path.join(homedir(), 'Library/Caches/linewright');
  return path.join(XDG_CACHE_HOME || path.join(homedir(), '.cache'), 'linewright');
}
