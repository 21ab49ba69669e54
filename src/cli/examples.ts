import type { Command } from 'commander';

/** Command lines to copy and what each does, by command. */
export const examples: Readonly<
  Record<string, readonly (readonly [line: string, does: string])[]>
> = {
  new: [
    ['linewright new my-course', 'a small course that builds, with an id of its own'],
    ['linewright new --look library my-course', 'the same in bottle green and an old-style face'],
  ],
  check: [
    ['linewright check my-course', 'all findings of a course'],
    ['linewright check my-course --fix', 'makes the safe repairs, and tells what is left'],
    ['linewright check --format sarif > findings.sarif', 'for a code host, in its root'],
  ],
  build: [
    ['linewright build my-course', 'publishes to my-course/site'],
    [
      'linewright build my-course --out public --site https://example.org/course',
      'elsewhere, with the address that cards and feeds name',
    ],
  ],
  letter: [
    ['linewright letter 1 my-course', 'the first chapter'],
    ['linewright letter --news latest my-course', 'the newest news'],
    [
      'linewright letter --positions main,iqp --from "A. Author <a@example.org>" my-course',
      'two named positions',
    ],
  ],
  export: [
    ['linewright export my-course --format epub', 'an e-book'],
    ['linewright export my-course --out lines.pgn', 'PGN, as the name of the file tells'],
    ['linewright export my-course --format pgn --chapter the-main-line', 'one chapter'],
    [
      'linewright export my-course --out all.pgn --with-directives',
      'for a co-author: import makes the course again',
    ],
  ],
  changes: [
    ['linewright changes v1.0 HEAD my-course', 'between two git revisions'],
    ['linewright changes old-course my-course --write', 'adds the news of it to my-course'],
  ],
  translate: [
    ['linewright translate de my-course', 'what is still to be translated into German'],
    ['linewright translate de my-course --write', 'makes the files, and marks what has changed'],
  ],
  import: [
    ['linewright import games.pgn --out my-course', 'a chapter a game'],
    ['linewright import analysis.pgn --by branch --side black', 'a chapter a first branch'],
    ['linewright import analysis.pgn --into my-course', 'what is new in it for a course'],
    [
      'linewright import analysis.pgn --into my-course --write',
      'the same, written where it belongs',
    ],
  ],
  diagram: [
    ['linewright diagram --after "1. e4 e5 2. Nf3" --out board.svg', 'after some moves'],
    ['linewright diagram --at main my-course --out main.png --scale 2', 'a named position'],
  ],
  compare: [
    ['linewright compare games.pgn my-course --player "A. Author"', 'your own games'],
    ['linewright compare - my-course --format json < games.pgn', 'for other programs'],
  ],
  engine: [
    ['linewright engine my-course --engine stockfish --nodes 200000', 'a quick look'],
    [
      'linewright engine my-course --engine stockfish --doubtful --depth 30',
      'a deeper one, only where check has a doubt',
    ],
  ],
  gaps: [
    ['linewright gaps my-course', 'the most wanted replies'],
    ['linewright gaps my-course --games games.pgn --all', 'all of them, those of games, too'],
  ],
  lsp: [['linewright lsp', 'as an editor starts it']],
  where: [
    ['linewright where "1. d4 d5 2. c4 e6" my-course', 'a position by its moves'],
    ['linewright where main my-course', 'a position by its name'],
    ['linewright where "8/8/8/8/8/4k3/4p3/4K3 w - - 0 1" my-course', 'a position by its FEN'],
  ],
  dev: [['linewright dev my-course', 'shows it at http://localhost:4180/']],
  preview: [['linewright preview my-course', 'shows at http://localhost:4180/ what was built']],
  explain: [
    ['linewright explain move-illegal', 'one rule'],
    ['linewright explain', 'all rules, a line each'],
  ],
  handbook: [['linewright handbook --out handbook', 'then open handbook/index.html']],
  completion: [
    ['linewright completion bash >> ~/.bashrc', 'for bash, from its next start on'],
    ['linewright completion zsh >> ~/.zshrc', 'for zsh, behind a line that runs compinit'],
    [
      'linewright completion fish > ~/.config/fish/completions/linewright.fish',
      'for fish, at once',
    ],
  ],
};

export function addExamples(program: Command): void {
  for (const command of program.commands) {
    const lines = (examples[command.name()] ?? []).map(([line, does]) => `  # ${does}\n  ${line}`);
    if (lines.length > 0) command.addHelpText('after', `\nExamples:\n${lines.join('\n')}`);
  }
}
