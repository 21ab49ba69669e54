import { type Command, InvalidArgumentError, Option } from 'commander';
import { colors } from '../chess/types.ts';
import { themes } from '../draw/paint.ts';
import { runs } from './runs.ts';

/** Limits of a board's width, in pixels. */
const smallest = 32;
const largest = 4096;

export function defineDiagram(command: Command): void {
  command
    .description('draw one position as an SVG or PNG picture')
    .argument('[dir]', 'the course folder, for --at', '.')
    .addOption(new Option('--at <label>', 'a position that the course has named'))
    .addOption(new Option('--fen <fen>', 'a position as FEN').conflicts(['at', 'after']))
    .addOption(new Option('--after <moves>', 'moves from the start: "1. d4 d5"').conflicts('at'))
    .option('--out <file>', 'the file to write, .svg or .png; - is the standard output', '-')
    .addOption(new Option('--format <format>', 'where the name does not tell').choices(formats))
    .option('--size <pixels>', `width of the picture, ${smallest} to ${largest}`, parseSize, 560)
    .addOption(
      new Option('--scale <scale>', 'image pixels to a pixel, of a PNG').choices(['1', '2']),
    )
    .addOption(new Option('--view <side>', 'the side at the bottom').choices(colors))
    .option('--no-coordinates', 'without letters and figures at the board')
    .option('--mark <squares>', 'squares to mark: "e5 f4"')
    .option('--plan <arrows>', 'arrows of a plan: "f3-e5 e5-g6"')
    .option('--threat <arrows>', 'arrows of a threat')
    .option('--guard <arrows>', 'arrows from a guard to what it guards')
    .option('--caption <text>', 'words below the board; the side to move follows them')
    .option('--language <tag>', 'of the words (default: that of the course, else en)')
    .addOption(new Option('--theme <theme>', 'colours').choices(themes).default('two-tone'))
    .option('--alt', 'also print the picture in words, for an alternative text', false)
    .action(runs(async () => (await import('./diagram.ts')).diagram));
}

export const formats = ['svg', 'png'] as const;

function parseSize(text: string): number {
  const size = Number(text);
  if (/^\d+$/.test(text) && size >= smallest && size <= largest) return size;
  throw new InvalidArgumentError(
    `Give a whole number from ${smallest} to ${largest}: smaller, no piece can be told from another; larger, no program shows the file (an SVG can be set to any size).`,
  );
}
