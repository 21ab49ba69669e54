/** The system's code of an error, such as `ENOENT`; else the error in words. */
export function errorCode(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}

/** For `catch`: nothing, where the only fault is that a file is missing. */
export function ignoreMissing(error: unknown): undefined {
  if (errorCode(error) !== 'ENOENT') throw error;
  return undefined;
}
