import type { Scanned } from '../scan/scanner.ts';
import type { MovetextProblem, Span } from '../types.ts';
import * as problems from './problems.ts';

/**
 * So many problems of a game are told; the others are counted. Where a text of another kind was pasted,
 * each word of it is one.
 */
const mostProblems = 1000;

/** The problems of one game. A run of words or of tags is one of them. */
export class ProblemList {
  readonly #text: string;
  readonly #found: MovetextProblem[] = [];
  #untold = 0;
  #run: { kind: 'words' | 'tag'; start: number; end: number } | undefined;

  constructor(text: string) {
    this.#text = text;
  }

  report(problem: MovetextProblem): void {
    if (this.#found.length < mostProblems) this.#found.push(problem);
    else this.#untold++;
  }

  extendRun(kind: 'words' | 'tag', { start, end }: Span): void {
    if (this.#run === undefined) this.#run = { kind, start, end };
    else this.#run.end = end;
  }

  /** Reports the run that a token ends. Words are reported a line at a time, tags together. */
  endRunBefore(token: Scanned): void {
    const goesOn = token.kind === this.#run?.kind && (token.kind === 'tag' || token.breaks === 0);
    if (!goesOn) this.endRun();
  }

  endRun(): void {
    if (this.#run === undefined) return;
    const { kind, start, end } = this.#run;
    const span = { start, end };
    if (kind === 'tag') this.report(problems.tagMisplaced(span));
    else this.report(problems.textUnreadable(span, this.#text.slice(start, end)));
    this.#run = undefined;
  }

  /** In the order of the text. */
  all(): { readonly problems: MovetextProblem[]; readonly untold?: number } {
    const found = this.#found.sort((a, b) => a.span.start - b.span.start);
    return { problems: found, ...(this.#untold > 0 && { untold: this.#untold }) };
  }
}
