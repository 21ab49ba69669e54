/** What the bundle for browsers takes for `node:module`: the one package that is loaded late is in it. */
import * as parse5 from 'parse5';

export function createRequire(): (name: string) => unknown {
  return (name) => {
    if (name !== 'parse5') throw new Error(`${name} is not in this bundle`);
    return parse5;
  };
}
