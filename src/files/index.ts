/** Plain files of a folder, and only those: nothing outside it is read, and nothing waits. */

export { codeHash } from './code-hash.ts';
export { copyPlainFile } from './copy-plain-file.ts';
export { dropOldest } from './drop-oldest.ts';
export { type LineStore, openLineStore } from './line-store.ts';
export { type ListedFile, listFolder } from './list-folder.ts';
export { isAt, openPlainFile, plainFlags } from './open-plain-file.ts';
export { readPlainFile, readUpTo } from './read-plain-file.ts';
export { FileRefusedError, type Refusal, refusals } from './refusals.ts';
export { replaceFile } from './replace-file.ts';
export { replacePlainFile } from './replace-plain-file.ts';
export { sealLength, sealOf } from './seal.ts';
export { readSealed, writeSealed } from './sealed-file.ts';
export { tabbed } from './tabbed.ts';
