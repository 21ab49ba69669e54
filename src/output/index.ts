export { checkOutputFile } from './check-output.ts';
export { isHostFile } from './host-files.ts';
export { listFiles } from './list-files.ts';
export { makeNewFolder } from './make-new-folder.ts';
export { OutputError } from './output-error.ts';
export { prepareOutput } from './prepare-output.ts';
export { replaceFolder } from './replace-folder.ts';
export { settleOutput } from './settle-output.ts';
export { makeTemporaryFolder, type TemporaryFolder } from './temporary-folder.ts';
