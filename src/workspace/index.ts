export { loadKept, saveKept } from './keep-on-disk.ts';
export type { KeptChapter } from './kept-chapter.ts';
export { type CurrentCourse, createWorkspace, type Work, type Workspace } from './workspace.ts';
