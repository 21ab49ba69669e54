import { Argument, type Command } from 'commander';
import { runs } from './runs.ts';

const shells = ['bash', 'zsh', 'fish'] as const;

export function defineGuideCommands(program: Command): void {
  program
    .command('explain')
    .description('tell what a rule finds, why, and what to do; without a rule: list them all')
    .argument('[rule]', 'its id, as it stands in a finding')
    .action(runs(async () => (await import('./explain.ts')).explain));

  program
    .command('handbook')
    .description('write the handbook as a site, to be read here or published')
    .option('--out <dir>', 'the folder to write', 'linewright-handbook')
    .action(runs(async () => (await import('./handbook.ts')).handbook));

  program
    .command('completion')
    .description('print the script that makes a shell complete these commands')
    .addArgument(new Argument('<shell>', 'which one').choices(shells))
    .action(runs(async () => (await import('./completion.ts')).printCompletion));

  // Called by the completion scripts; the library fixes its name.
  program
    .command('completion-server', { hidden: true })
    .argument('[words...]')
    .allowUnknownOption()
    .action(async (words: readonly string[]) => {
      const { serveCompletion } = await import('./completion.ts');
      process.exitCode = await serveCompletion(program, words, process.env);
    });
}
