/** Why a course that passed the check cannot become a site. The previous output stays. */
export class SiteError extends Error {
  readonly hint: string;

  constructor(message: string, hint: string) {
    super(message);
    this.name = 'SiteError';
    this.hint = hint;
  }
}
