import { sentence } from './sentence.ts';

/**
 * Why something cannot be done, for whoever asked for it: `message` says what is in the way, `hint` what to do about
 * it. Both are sentences, or parts of one without a full stop. Nothing is lost.
 */
export class UserError extends Error {
  readonly hint: string;

  /** @param hint empty where the message says it. */
  constructor(message: string, hint: string) {
    super(message);
    this.name = new.target.name;
    this.hint = hint;
  }

  /** All of it, in sentences. */
  get told(): string {
    return [this.message, this.hint].flatMap((part) => (part ? sentence(part) : [])).join(' ');
  }
}
