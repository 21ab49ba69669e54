interface Chapter {
  readonly path: string;
  readonly text: string;
}

/** The built program's own reader and workspace, for a course whose files are then changed in memory. */
export async function openCourseFiles(folder: string) {
  const { findFiles } = await import('../../dist/read/index.js' as string);
  const { createWorkspace } = await import('../../dist/workspace/index.js' as string);
  const files: { readonly chapters: readonly Chapter[] } = await findFiles(folder);
  const workspace = createWorkspace();
  const update = (changed: typeof files): number => workspace.update(changed).diagnostics.length;
  return { files, update };
}
