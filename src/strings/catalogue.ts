import type * as english from './en/index.ts';

/** What is said in one language: sections by their names, but for those whose words stand by themselves. */
export function catalogueOf(sections: typeof english) {
  const { board, changes, embed, free, page, practice, ...named } = sections;
  return { ...named, ...board, ...changes, ...embed, ...free, ...page, ...practice };
}
