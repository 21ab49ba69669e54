import { fileURLToPath } from 'node:url';

/** The courses of this repository: none may have a finding, not even a warning. */
export const soundCourses: readonly { readonly name: string; readonly folder: string }[] = [
  'demo-course',
  'content/handbook',
  'content/starter',
].map((name) => ({ name, folder: fileURLToPath(new URL(`../${name}`, import.meta.url)) }));
