import { vi } from 'vitest';
import { explainError } from '../../src/cli/explain-error.ts';
import { program } from '../../src/cli/program.ts';

/** What a command of the program has said and how it ended. */
export interface Ran {
  readonly status: number | string | null | undefined;
  readonly stdout: string;
  readonly stderr: string;
}

/**
 * A command of the program in this process: for what it says and does, where neither the built program nor the process
 * is the subject. To start one takes half a second of the processor.
 */
export async function runHere(...args: readonly string[]): Promise<Ran> {
  const said = { stdout: '', stderr: '' };
  const spies = (['stdout', 'stderr'] as const).map((name) =>
    vi.spyOn(process[name], 'write').mockImplementation((text) => {
      said[name] += typeof text === 'string' ? text : Buffer.from(text).toString();
      return true;
    }),
  );
  try {
    await program.parseAsync(args, { from: 'user' }).catch((error: unknown) => {
      process.exitCode = explainError(error);
    });
    return { status: process.exitCode, ...said };
  } finally {
    process.exitCode = undefined;
    for (const spy of spies) spy.mockRestore();
  }
}
