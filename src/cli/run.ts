import { endWhenClosed } from './console.ts';
import { explainError } from './explain-error.ts';
import { program } from './program.ts';

endWhenClosed();

try {
  await program.parseAsync();
} catch (error) {
  process.exitCode = explainError(error);
}
