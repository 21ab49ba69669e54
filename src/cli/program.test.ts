import { expect, test } from 'vitest';
import { candidates, cursorIn } from './completion.ts';
import { examples } from './examples.ts';
import { ruleIds } from './explain.ts';
import { program } from './program.ts';

const commands = program.createHelp().visibleCommands(program);
const written = commands.filter((command) => command.name() !== 'help');

test('every command has examples in its help, and every example is of a command', () => {
  expect(Object.keys(examples).sort()).toEqual(written.map((each) => each.name()).sort());
  let told = '';
  for (const command of written) {
    command.configureOutput({
      writeOut: (text) => {
        told += text;
      },
    });
    command.outputHelp();
  }
  for (const [line] of Object.values(examples).flat()) expect(told).toContain(`\n  ${line}\n`);
});

/** The words of a command line without what a shell does with its output. */
function wordsOf(line: string): string[] {
  const [own = ''] = line.split(/ (?:>>?|<) /);
  return [...own.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word);
}

test.each(Object.values(examples).flat())('%s can be typed', (line) => {
  const [name, of, ...words] = wordsOf(line);
  expect(name).toBe('linewright');
  const command = written.find((each) => each.name() === of);
  if (command === undefined) throw new Error(`there is no command ${of}`);
  // It throws for a value that is none of an option's choices.
  const { operands, unknown } = command.parseOptions(words);
  expect(unknown).toEqual([]);
  const { registeredArguments: all } = command;
  expect(operands.length).toBeLessThanOrEqual(all.length);
  expect(operands.length).toBeGreaterThanOrEqual(all.filter(({ required }) => required).length);
});

const names = (line: string) => {
  const words = line.split(' ');
  const found = candidates(program, words.slice(0, -1), words.at(-1) ?? '');
  return found === 'files' ? found : found.map(({ name }) => name);
};

test('a shell is told what may stand at the cursor', () => {
  expect(names('che')).toEqual(['check']);
  expect(names('')).toEqual(commands.map((each) => each.name()));
  expect(names('check --for')).toEqual(['--format']);
  expect(names('check --format ')).toEqual(['text', 'json', 'sarif', 'github']);
  expect(names('check my-course --format s')).toEqual(['sarif']);
  expect(names('import --side b')).toEqual(['black', 'both']);
  expect(names('completion ')).toEqual(['bash', 'zsh', 'fish']);
  expect(names('explain move-il')).toEqual(['move-illegal']);
  expect(names('explain ')).toEqual(ruleIds);
  expect(names('nonsense ')).toEqual([]);
});

test.each([
  ['bash', '1', 'linewright ch', 1],
  ['zsh', '2', 'linewright check ', 2],
  ['fish', '2', 'linewright ch ', 1],
  ['fish', '2', 'linewright check ', 2],
])('%s tells at word %s of "%s" where the cursor is', (shell, at, line, index) => {
  const words = line.trim().split(' ');
  const point = line === 'linewright ch ' ? 13 : line.length;
  const env = { SHELL: shell, COMP_CWORD: at, COMP_LINE: line, COMP_POINT: String(point) };
  expect(cursorIn(words, env)).toBe(index);
});

test('where a file or a folder may stand, the shell completes its name', () => {
  for (const line of ['check ', 'build --out ', 'compare ga', 'compare games.pgn my']) {
    expect(names(line), line).toBe('files');
  }
  // There is no second folder.
  expect(names('check my-course ')).toEqual([]);
});
