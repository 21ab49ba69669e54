/** Whether a path names what hosts and repositories keep at the top of a folder, such as `.git`. */
export function isHostFile(path: string): boolean {
  return path.startsWith('.') || path === 'CNAME';
}
