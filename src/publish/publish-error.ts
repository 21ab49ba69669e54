/** Why what was asked for cannot be made. Nothing is written. */
export class PublishError extends Error {
  readonly hint: string;

  constructor(message: string, hint: string) {
    super(message);
    this.name = 'PublishError';
    this.hint = hint;
  }
}
