/** A block of the course language, whose fence nothing in it can close. */
export function fenced(name: string, info: string, content: string): string {
  let longest = 2;
  for (const [run] of content.matchAll(/`+/g)) longest = Math.max(longest, run.length);
  const fence = '`'.repeat(longest + 1);
  const body = content.trimEnd();
  return `${fence}${`${name} ${info}`.trimEnd()}\n${body === '' ? '' : `${body}\n`}${fence}`;
}
