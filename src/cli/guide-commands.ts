import { Argument, type Command } from 'commander';

/** Shells with completion. */
const shells = ['bash', 'zsh', 'fish'] as const;

/** The commands about the program itself. */
export function defineGuideCommands(program: Command): void {
  program
    .command('explain')
    .description('tell what a rule finds, why, and what to do; without a rule: list them all')
    .argument('[rule]', 'its id, as it stands in a finding')
    .action(async (rule: string | undefined) => {
      const { explain } = await import('./explain.ts');
      process.exitCode = explain(rule);
    });

  program
    .command('handbook')
    .description('write the handbook as a site, to be read here or published')
    .option('--out <dir>', 'the folder to write', 'linewright-handbook')
    .action(async (options: { out: string }) => {
      const { handbook } = await import('./handbook.ts');
      process.exitCode = await handbook(options);
    });

  program
    .command('completion')
    .description('print the script that makes a shell complete these commands')
    .addArgument(new Argument('<shell>', 'which one').choices(shells))
    .action(async (shell: (typeof shells)[number]) => {
      const { printCompletion } = await import('./completion.ts');
      process.exitCode = await printCompletion(shell);
    });

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
