/**
 * An engine that knows one move a side and does one thing wrong: `node fake.mjs MODE [FILE]`. Its move is the step
 * of the a-pawn, which must stand at home.
 */
import { existsSync, writeFileSync } from 'node:fs';
import { createInterface } from 'node:readline';

const [, , mode = 'good', file = ''] = process.argv;
const say = (...lines) => process.stdout.write(lines.map((line) => `${line}\n`).join(''));

let side = 'w';
const move = () => (side === 'w' ? 'a2a3' : 'a7a6');
const value = (score = 'cp 10') =>
  `info depth 12 seldepth 14 score ${score} nodes 5000 pv ${move()}`;
const end = (best = move()) => `bestmove ${best}`;

/** What it does when it is told to search. */
const searches = {
  good: () => say(value(), end()),
  'three, then none': () => {
    searched++;
    if (searched > 3) writeFileSync(file, '');
    else say(value(), end());
  },
  silent: () => {
    deaf = true;
  },
  endless: () => {},
  babbling: () => setInterval(() => say(value()), 5),
  twice: () => say(value(), end(), end()),
  'twice, late': () => {
    say(value(), end());
    const late = end();
    setTimeout(() => say(late), 15);
  },
  'no move': () => say(value(), end('(none)')),
  'null move': () => say(value(), end('0000')),
  'bare bestmove': () => say(value(), 'bestmove'),
  'another position': () => say(value().replace(move(), 'h4h5'), end('h4h5')),
  'another move': () => say(value(), end('h2h4')),
  'no score': () => say('info depth 12 nodes 5000', end()),
  bounds: () => say(value('cp 10 lowerbound'), value('cp 30 upperbound'), end()),
  shallow: () => say(value().replace('depth 12', 'depth 1'), end()),
  mate: () => say(value('mate 3'), end()),
  'half a line': () => {
    process.stdout.write(`${value()}\nbestmove a2`, () => process.exit(0));
  },
  'long line': () => say(`info string ${'x'.repeat(1_000_000)}`, value(), end()),
  'loud stderr': () => {
    for (let line = 0; line < 5000; line++) process.stderr.write(`${'complaint '.repeat(100)}\n`);
    say(value(), end());
  },
  'exit 0': () => process.exit(0),
  'exit 3': () => {
    process.stderr.write('starting\nno network file\n', () => process.exit(3));
  },
  signal: () => process.kill(process.pid, 'SIGSEGV'),
  once: () => {
    if (existsSync(file)) return say(value(), end());
    writeFileSync(file, '');
    return process.exit(1);
  },
};

let deaf = false;
let searched = 0;
createInterface({ input: process.stdin })
  .on('line', (line) => {
    const [command, ...words] = line.split(' ');
    if (deaf) return;
    if (command === 'uci' && mode !== 'no uciok') {
      say('id name Fake 1', 'id author Nobody', 'option name Hash type spin default 1 min 1 max 8');
      say('uciok');
    }
    if (command === 'isready') say('readyok');
    if (command === 'position') side = words[2] ?? 'w';
    if (command === 'go') (searches[mode] ?? searches.good)();
    if (command === 'quit') process.exit(0);
  })
  // Whoever started it is gone.
  .on('close', () => process.exit(0));
