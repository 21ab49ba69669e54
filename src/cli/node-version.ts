// Any Node must be able to parse this file: nothing newer than ES2018.

/** The oldest Node that the program runs on: `engines` in package.json says the same. */
export const oldestNode = '22.12.0';

/** Why a version of Node is too old; `undefined` if it is not. */
export function nodeFault(version: string): string | undefined {
  const found = version.split('.').map((part) => parseInt(part, 10));
  const needed = oldestNode.split('.').map((part) => parseInt(part, 10));
  const index = needed.findIndex((part, at) => part !== found[at]);
  if (index < 0 || (found[index] || 0) > (needed[index] || 0)) return undefined;
  return `This is Node ${version}, and Linewright needs Node ${oldestNode} or newer: install one from https://nodejs.org, or choose one in your version manager, and run the command again.`;
}
