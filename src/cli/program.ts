import { Command, InvalidArgumentError, Option } from 'commander';
import { today } from '../pipeline/told-date.ts';
import { isDay, isLanguageTag, isShelf, webAddressFault } from '../read/index.ts';
import { check } from './check/check.ts';
import { checkFormats } from './check/check-options.ts';
import { compareFormats } from './compare/compare-formats.ts';
import { stderr, stdout } from './console.ts';
import { defineDiagram } from './diagram-command.ts';
import { resultPlaces } from './engine/result-places.ts';
import { addExamples } from './examples.ts';
import { exportFormats } from './export-formats.ts';
import { gapsFormats } from './gaps/gaps-options.ts';
import { defineGuideCommands } from './guide-commands.ts';
import { lookNames } from './looks.ts';
import { packageVersion } from './package-version.ts';
import { runs } from './runs.ts';
import { whereFormats } from './where/where-options.ts';

export const program = new Command('linewright')
  .description('Proves an opening course and publishes it as a site.')
  .version(packageVersion())
  .configureOutput({
    writeOut: stdout.printLines,
    writeErr: stderr.printLines,
    // A quoted argument may hold anything; only a suggestion gets a line of its own.
    outputError: (text) => {
      for (const line of text.trimEnd().split(/\n(?=\(Did you mean )/)) stderr.print`${line}\n`;
    },
  })
  .showHelpAfterError('(linewright --help lists the commands)')
  .exitOverride();

const siteOption = new Option(
  '--site <url>',
  'address that the site will have (default: the setting `site`)',
).argParser(parseSite);

program
  .command('new')
  .description('make a course that builds, to start from')
  .argument('<dir>', 'a folder that does not exist yet')
  .addOption(oneOf('--look <look>', 'a finished look for it', lookNames))
  .action(runs(async () => (await import('./new.ts')).makeNew));

program
  .command('check')
  .description('tell what is wrong with a course; exit 0 clean, 1 errors, 2 could not run')
  .argument('[dir]', 'the course folder', '.')
  .addOption(oneOf('--format <format>', 'of the findings', checkFormats).default('text'))
  .option('--fix', 'make the safe repairs in the files', false)
  .option(
    '--judgements',
    'list what the author judges with `:judge` instead of the findings',
    false,
  )
  .option('--claims', 'with --fix: put claims behind the sentences that they prove', false)
  .action(runs(async () => check));

program
  .command('build')
  .description('check a course and publish its site')
  .argument('[dir]', 'the course folder', '.')
  .option('--out <dir>', 'the folder to publish to (default: site in the course folder)')
  .option('--base <path>', 'path on the host, for the page that answers missing addresses')
  .addOption(siteOption)
  .action(runs(async () => (await import('./build.ts')).build));

program
  .command('letter')
  .description('check a course and write a chapter, a part of one, positions or news as an e-mail')
  .usage('[options] <chapter> [dir] | --positions <names> [dir] | --news <name> [dir]')
  .argument('[chapter]', 'its id, its number or its file')
  .argument('[dir]', 'the course folder (default: ".")')
  .option('--language <tag>', 'one that the course is translated into', parseLanguage)
  .option('--section <heading>', 'only what stands below this heading of the chapter')
  .option(
    '--positions <names>',
    'instead of a chapter: named positions, as in `main,iqp`',
    parseNames,
  )
  .option(
    '--news <name>',
    'instead of a chapter: news of the course, as in `2026-11-25` or `latest`',
  )
  .option('--out <dir>', 'the folder to write (default: in `letters` in the course folder)')
  .option(
    '--site <url>',
    'address of the course, where links lead (default: the setting `site`)',
    parseSite,
  )
  .option(
    '--images <url>',
    'address where you will put the pictures (default: they are attached)',
    parseSite,
  )
  .option('--date <date>', 'of the message, as in 2026-11-25 (default: today)', parseDate)
  .option('--subject <text>', 'of the message (default: the titles)')
  .option('--from <address>', 'who sends it')
  .option('--to <address>', 'who gets it')
  .option('--sender <text>', 'who sends it and where, for the foot: a name and a postal address')
  .option('--unsubscribe <url>', 'where a reader leaves the list: an https or mailto address')
  .option('--one-click', 'that address takes a POST from a mail program’s own button (RFC 8058)')
  .action(runs(async () => (await import('./letter.ts')).letter));

program
  .command('export')
  .description('check a course and write it as one file')
  .argument('[dir]', 'the course folder', '.')
  .addOption(
    oneOf(
      '--format <format>',
      'of the file, where its name does not tell: `epub` is an e-book',
      exportFormats,
    ),
  )
  .option('--out <file>', 'the file to write (default: named after the course, in its folder)')
  .addOption(siteOption)
  .option('--language <tag>', 'one that the course is translated into', parseLanguage)
  .option('--date <date>', 'of an e-book (default: of the latest news)', parseDate)
  .option('--chapter <id>', 'only this chapter, as PGN')
  .option('--latin1', 'PGN in ISO 8859-1 instead of UTF-8')
  .option('--with-directives', 'PGN of which `import` makes the same course: for a co-author')
  .action(runs(async () => (await import('./export.ts')).exportCourse));

program
  .command('changes')
  .description('tell what changed for a student between two editions of a course')
  .argument('<old>', 'a folder, or a git revision of the course')
  .argument('<new>', 'a folder, or a git revision of the course')
  .argument(
    '[dir]',
    'the course folder that revisions are of (default: NEW, or the current folder)',
  )
  .addOption(
    oneOf('--format <format>', 'of what is printed', ['text', 'markdown', 'json']).default('text'),
  )
  .option('--write', 'add it to the news of the course instead, to be published with it', false)
  .option('--date <date>', 'date of the news', parseDate, today())
  .action(runs(async () => (await import('./changes.ts')).changes));

program
  .command('translate')
  .description('make the files of a translation, moves in place, and bring them up to date')
  .argument('<language>', 'a language tag, such as `de`')
  .argument('[dir]', 'the course folder', '.')
  .option('--write', 'write the files instead of telling what they would be', false)
  .action(runs(async () => (await import('./translate.ts')).translate));

program
  .command('import')
  .description('make the draft of a course from the games of a PGN file')
  .argument('<file>', 'the PGN file')
  .option('--out <dir>', 'the folder of the course (default: named after the file)')
  .addOption(
    oneOf('--side <side>', 'the side that is taught', ['white', 'black', 'both']).default('both'),
  )
  .addOption(
    oneOf('--by <what>', 'what makes a chapter: a game, or the first branch', [
      'game',
      'branch',
    ]).default('game'),
  )
  .addOption(oneOf('--without <what>', 'what is left out of the comments: `clocks`', ['clocks']))
  .option('--into <dir>', 'a course that the file is laid against; shows what is new in it')
  .option('--write', 'with --into: write the new lines where they belong')
  .option('--past-ends', 'with --into: take lines on where the course ends on purpose (`:end`)')
  .addOption(oneOf('--format <format>', 'with --into: of the report', ['text', 'json']))
  .addOption(
    oneOf(
      '--as <what>',
      'with --into: what the games are (default: played games have players and a result)',
      ['lines', 'games'],
    ),
  )
  .action(runs(async () => (await import('./import/import.ts')).importPgn));

defineDiagram(program.command('diagram'));

program
  .command('compare')
  .description('tell where games leave a course, and how often')
  .argument('<games>', 'a PGN file, or - for the standard input')
  .argument('[dir]', 'the course folder', '.')
  .addOption(oneOf('--format <format>', 'of the report', compareFormats).default('text'))
  .option('--player <name>', 'only games in which this player has the side of the course')
  .option('--all', 'every position instead of the most frequent', false)
  .action(runs(async () => (await import('./compare/compare.ts')).compare));

program
  .command('engine')
  .description(
    'have a UCI engine look at advice, replies, signs and exercises; check tells what it says of them',
  )
  .argument('[dir]', 'the course folder', '.')
  .requiredOption('--engine <program>', 'the engine, a program that speaks UCI')
  .option('--argument <text>', 'an argument for it; again for more', collect, [])
  .option('--option <name=value>', 'an option of its own; again for more', collectOption, [])
  .addOption(
    new Option('--depth <number>', 'search each position to this depth')
      .conflicts(['nodes', 'time'])
      .argParser(parseCount(200)),
  )
  .addOption(
    new Option('--nodes <number>', 'search so many nodes of each position (default: 1000000)')
      .conflicts(['depth', 'time'])
      .argParser(parseCount(1e12)),
  )
  .addOption(
    new Option('--time <seconds>', 'search each position so long')
      .conflicts(['depth', 'nodes'])
      .argParser(parseSeconds),
  )
  .option('--lines <number>', 'how many best moves are asked for', parseCount(20), 3)
  .option('--hash <megabytes>', 'memory for the table of each engine', parseCount(65536), 64)
  .option(
    '--jobs <number>',
    'how many engines at a time (default: one less than cores)',
    parseCount(256),
  )
  .addOption(
    oneOf(
      '--keep <where>',
      'where results are kept: facts/engine.tsv in the course, or the cache',
      resultPlaces,
    ).default('course'),
  )
  .option(
    '--patience <seconds>',
    'an engine that says nothing for so long is started again',
    parseSeconds,
    60,
  )
  .option('--doubtful', 'look only where check tells something by the results so far', false)
  .option('--prune', 'take out results of positions that the course has no more', false)
  .action(runs(async () => (await import('./engine/engine.ts')).engine));

program
  .command('gaps')
  .description(
    'list replies that a course lacks: by more reasons first, then by games, then by the engine',
  )
  .argument('[dir]', 'the course folder', '.')
  .addOption(oneOf('--format <format>', 'of the report', gapsFormats).default('text'))
  .option(
    '--games <file>',
    'a PGN file, or - for the standard input: replies that are frequent in it; again for more',
    collect,
  )
  .option('--at-least <number>', 'games by which a reply is frequent', parseCount(1e9), 2)
  .option('--all', 'every reply instead of the first', false)
  .action(runs(async () => (await import('./gaps/gaps.ts')).gaps));

program
  .command('where')
  .description(
    'tell where a position stands in a course, what is advised there, and how it is reached',
  )
  .argument('<position>', 'a FEN, moves such as "1. d4 d5 2. c4" in quotation marks, or a name')
  .argument('[dir]', 'the course folder', '.')
  .addOption(oneOf('--format <format>', 'of the answer', whereFormats).default('text'))
  .option('--site <url>', 'address that the site has (default: the setting `site`)', parseSite)
  .action(runs(async () => (await import('./where/where.ts')).where));

program
  .command('dev')
  .description('show a course while it is being written, with its findings')
  .argument('[dir]', 'the course folder', '.')
  .option('--port <number>', 'port to serve at', parsePort, 4180)
  .option(
    '--editor <command>',
    'what opens a file at a line, such as "code -g {file}:{line}:{column}" (default: $LINEWRIGHT_EDITOR)',
  )
  .action(async (folder: string, options: { port: number; editor?: string }) => {
    if (await isShelf(folder)) {
      const { devShelf } = await import('./shelf/dev-shelf.ts');
      return devShelf(folder, options);
    }
    const { dev } = await import('./dev.ts');
    await dev(folder, options);
  });

program
  .command('lsp')
  .description('serve an editor by the Language Server Protocol, over the standard streams')
  // Editors pass it, though it is the only way.
  .option('--stdio', 'speak over the standard streams', true)
  .action(async () => {
    const { lsp } = await import('./lsp.ts');
    // Whatever the editor left open would keep the process alive.
    process.exit(await lsp());
  });

program
  .command('preview')
  .description('serve what was built')
  .argument('[dir]', 'the course folder', '.')
  .option('--out <dir>', 'the folder it was published to (default: site in the course folder)')
  .option('--port <number>', 'port to serve at', parsePort, 4180)
  .action(async (folder: string, options: { out?: string; port: number }) => {
    const { preview } = await import('./preview.ts');
    await preview(folder, options);
  });

defineGuideCommands(program);
addExamples(program);

function oneOf(flags: string, what: string, choices: readonly string[]): Option {
  return new Option(flags, what).choices(choices);
}

function collect(text: string, before: readonly string[] = []): string[] {
  return [...before, text];
}

function collectOption(
  text: string,
  before: readonly (readonly [name: string, value: string])[],
): (readonly [name: string, value: string])[] {
  const [name = '', ...value] = text.split('=');
  if (name.trim() === '' || /[\r\n]/.test(text)) {
    throw new InvalidArgumentError('An option is written as name=value: "Clear Hash=".');
  }
  return [...before, [name.trim(), value.join('=').trim()]];
}

function parseCount(most: number) {
  return (text: string): number => {
    const number = Number(text);
    if (!/^\d+$/.test(text) || number < 1 || number > most) {
      throw new InvalidArgumentError(`It is a whole number from 1 to ${most}.`);
    }
    return number;
  };
}

function parseSeconds(text: string): number {
  const number = Number(text);
  if (!/^\d+(?:\.\d+)?$/.test(text) || number <= 0 || number > 86_400) {
    throw new InvalidArgumentError('It is a number of seconds, such as 2 or 0.5.');
  }
  return number;
}

function parseSite(text: string): string {
  const fault = webAddressFault(text);
  if (fault) throw new InvalidArgumentError(`Give ${fault}.`);
  return text.replace(/\/+$/, '');
}

function parseLanguage(text: string): string {
  if (!isLanguageTag(text)) {
    throw new InvalidArgumentError('A language is written as a tag, such as de or pt-BR.');
  }
  return text;
}

function parseDate(text: string): string {
  if (!isDay(text)) {
    throw new InvalidArgumentError('A date is written as year, month and day: 2026-11-25.');
  }
  return text;
}

function parseNames(text: string): string[] {
  return text.split(',').flatMap((name) => name.trim() || []);
}

function parsePort(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65535) {
    throw new InvalidArgumentError('A port is a number from 0 to 65535.');
  }
  return port;
}
