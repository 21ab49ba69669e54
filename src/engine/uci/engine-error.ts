/** What an engine did wrong, as a clause without a full stop: `it gave no move within 60 seconds`. */
export class EngineError extends Error {
  override readonly name = 'EngineError';
}
