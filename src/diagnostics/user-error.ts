/**
 * Why a command cannot do what it was asked, for whoever gave it: `message` says what is in the way,
 * `hint` what to do about it. Both are parts of a sentence, without a full stop. Nothing is lost.
 */
export class UserError extends Error {
  readonly hint: string;

  constructor(message: string, hint: string) {
    super(message);
    this.name = new.target.name;
    this.hint = hint;
  }
}
