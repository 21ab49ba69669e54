import { UserError } from '../diagnostics/index.ts';

/** Why nothing may be written where it was asked for. What stands there stays. */
export class OutputError extends UserError {}
