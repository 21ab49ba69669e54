export const checkFormats = ['text', 'json', 'sarif', 'github'] as const;

export interface CheckOptions {
  readonly format: (typeof checkFormats)[number];
  readonly fix: boolean;
  /** Lists the judgements of the course instead of its findings. */
  readonly judgements?: boolean;
  /** With `fix`: adds claims that prove what sentences state. */
  readonly claims?: boolean;
}
