export { comparesFresh } from './compare-fresh.ts';
export type { KeptChapter } from './kept/kept-chapter.ts';
export { loadKept, saveKept } from './kept/kept-findings.ts';
export { type KeptSyntax, openSyntax } from './kept/kept-syntax.ts';
export { hashOfFile } from './questions.ts';
export { readRevision } from './sources/revision.ts';
export { withUnsaved } from './sources/unsaved.ts';
export {
  type CurrentCourse,
  createWorkspace,
  type Workspace,
  type WorkspaceOptions,
} from './workspace.ts';
