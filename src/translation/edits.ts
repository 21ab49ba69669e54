export interface Edit {
  readonly at: number;
  /** Exclusive; the same as `at` where something is only put in. */
  readonly end: number;
  readonly text: string;
}

/** Makes edits that do not overlap; of those at one place the first given comes first. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let result = '';
  let done = 0;
  for (const edit of [...edits].sort((a, b) => a.at - b.at)) {
    // Within what another edit has replaced.
    if (edit.at < done) continue;
    result += text.slice(done, edit.at) + edit.text;
    done = edit.end;
  }
  return result + text.slice(done);
}
