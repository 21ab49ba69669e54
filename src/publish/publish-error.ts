import { UserError } from '../diagnostics/index.ts';

/** Why what was asked for cannot be made. Nothing is written. */
export class PublishError extends UserError {}
