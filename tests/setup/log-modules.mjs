/** Loaded before a program (`--import`): writes the address of each module that it loads into a file. */
import { appendFileSync } from 'node:fs';
import { registerHooks } from 'node:module';

const note = (what) => appendFileSync(process.env.LOADED_LOG, `${what}\n`);
registerHooks({
  load(url, context, next) {
    note(url);
    return next(url, context);
  },
});
// Native code.
const { dlopen } = process;
process.dlopen = (...args) => {
  note(args[1]);
  return Reflect.apply(dlopen, process, args);
};
