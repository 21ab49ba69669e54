import { UserError } from '../diagnostics/index.ts';

/** Why a course that passed the check cannot become a site. The previous output stays. */
export class SiteError extends UserError {}
