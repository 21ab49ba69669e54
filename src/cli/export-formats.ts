/** What `linewright export` can write; apart from the writing, which takes time to load. */
export const exportFormats = ['epub'] as const;

export interface ExportOptions {
  readonly format: (typeof exportFormats)[number];
  readonly out?: string;
  readonly site?: string;
}
