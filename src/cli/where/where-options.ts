export const whereFormats = ['text', 'json'] as const;

export interface WhereOptions {
  readonly format: (typeof whereFormats)[number];
  /** Address of the course; default: its setting `site`. */
  readonly site?: string;
}
