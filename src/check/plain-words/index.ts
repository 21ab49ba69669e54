export { claimsToAdd } from './claims-to-add.ts';
export { falseWords } from './false-words.ts';
