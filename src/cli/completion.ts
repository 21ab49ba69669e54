import type { SupportedShell } from '@pnpm/tabtab';
import type { Command } from 'commander';
import { exitCodes, stdout } from './console.ts';
import { ruleIds } from './explain.ts';

/** `linewright completion`: prints the completion script for a shell. */
export async function printCompletion(shell: SupportedShell): Promise<number> {
  const { default: tabtab } = await import('@pnpm/tabtab');
  const names = { name: 'linewright', completer: 'linewright' };
  stdout.printLines(await tabtab.getCompletionScript({ ...names, shell }));
  return exitCodes.clean;
}

/**
 * Answers a completion script: the words that may stand at the cursor, one a line. Where files may, nothing, so that
 * bash and zsh complete file names; fish needs a word of the library for that.
 */
export async function serveCompletion(
  program: Command,
  words: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): Promise<number> {
  const { default: tabtab } = await import('@pnpm/tabtab');
  const { SHELL: shell = '' } = env;
  const index = cursorIn(words, env);
  // The first word is the program's own name.
  const found = candidates(program, words.slice(1, index), words[index] ?? '');
  if (found === 'files') {
    if (shell !== 'bash') stdout.print`__tabtab_complete_files__\n`;
    return exitCodes.clean;
  }
  if (tabtab.isShellSupported(shell)) {
    tabtab.log([...found], shell, (line) => stdout.writeFile(`${line}\n`));
  }
  return exitCodes.clean;
}

/** Index of the word at the cursor; the number of words where a new one begins. */
export function cursorIn(
  words: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): number {
  const { SHELL: shell, COMP_CWORD: at, COMP_LINE: line = '', COMP_POINT: point } = env;
  // fish passes the number of words, whether or not a new one begins.
  if (shell === 'fish') {
    return line.slice(0, Number(point)).endsWith(' ') ? words.length : words.length - 1;
  }
  return at === undefined ? words.length - 1 : Number(at);
}

interface Candidate {
  readonly name: string;
  readonly description?: string;
}

/** Words that may follow `before` and begin with `begun`. */
export function candidates(
  program: Command,
  before: readonly string[],
  begun: string,
): readonly Candidate[] | 'files' {
  const [name = '', ...rest] = before;
  const visible = program.createHelp().visibleCommands(program);
  if (before.length === 0) {
    const all = visible.map((each) => ({ name: each.name(), description: each.description() }));
    return begin(begun.startsWith('-') ? optionsOf(program) : all, begun);
  }
  const command = visible.find((each) => each.name() === name);
  if (command === undefined) return [];
  const last = rest.at(-1);
  const opened = last === undefined ? undefined : optionOf(command, last);
  if (opened && (opened.required || opened.optional)) return choices(opened.argChoices, begun);
  if (begun.startsWith('-')) return begin(optionsOf(command), begun);
  const given = rest.filter((word, at) => !word.startsWith('-') && !takesNext(command, rest, at));
  const argument = command.registeredArguments[given.length];
  if (name === 'explain') return given.length === 0 ? choices(ruleIds, begun) : [];
  return argument === undefined ? [] : choices(argument.argChoices, begun);
}

function optionOf(command: Command, word: string) {
  return command.options.find(({ long, short }) => word === long || word === short);
}

/** Whether the word at `at` is the value of the option before it. */
function takesNext(command: Command, words: readonly string[], at: number): boolean {
  const before = at === 0 ? undefined : optionOf(command, words[at - 1] ?? '');
  return before !== undefined && (before.required || before.optional);
}

function optionsOf(command: Command): Candidate[] {
  return command
    .createHelp()
    .visibleOptions(command)
    .flatMap(({ long, description }) => (long ? [{ name: long, description }] : []));
}

function choices(
  names: readonly string[] | undefined,
  begun: string,
): readonly Candidate[] | 'files' {
  return names === undefined
    ? 'files'
    : begin(
        names.map((name) => ({ name })),
        begun,
      );
}

function begin(all: readonly Candidate[], begun: string): readonly Candidate[] {
  return all.filter(({ name }) => name.startsWith(begun));
}
