import { describe, expect, test } from 'vitest';
import { addressAfter } from '../../contract/testing/address-after.ts';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';

const line = '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5 a6 {:here[spanish]} 4. Ba4\n```\n';

/** The last section of a page as its reader sees it. */
function game(moves: string, { tags = '', attributes = '', side = 'white' } = {}): string {
  const block = `\`\`\`game${attributes}\n${tags}\n${moves}\n\`\`\`\n`;
  const [page = ''] = renderCourse([`${line}\n${block}`], { side });
  return readableText(page.slice(page.indexOf('<section class="game"')));
}

describe('the heading of a game', () => {
  // Tags and their meanings: PGN standard, 8.1.1.
  test('has the players in reading order, the result, and what is known of place and time', () => {
    const tags = [
      '[Event "Harbour Cup"]',
      '[Site "Old Mill"]',
      '[Date "2025.03.??"]',
      '[Round "3"]',
      '[White "Marlow, Ines"]',
      '[Black "Club Engine"]',
      '[Result "1/2-1/2"]',
      '[WhiteElo "2105"]',
      '[BlackElo "?"]',
      '',
    ].join('\n');
    expect(game('1. d4 1/2-1/2', { tags }).split('\n').slice(0, 2)).toEqual([
      'Ines Marlow (2105) – Club Engine ½–½',
      'Harbour Cup, round 3, Old Mill, March 2025',
    ]);
  });

  test('leaves out what is not known', () => {
    const tags =
      '[Event "?"]\n[Site "?"]\n[Date "????.??.??"]\n[Round "-"]\n[White "?"]\n[Black "Rook, R."]\n[Result "*"]\n';
    expect(game('1. d4 *', { tags }).split('\n').slice(0, 2)).toEqual(['N.N. – R. Rook', '1. d4']);
    expect(game('1. d4 *').split('\n')[0]).toBe('1. d4');
  });

  test('does not name the place twice', () => {
    const tags = '[Event "Old Mill Championship"]\n[Site "Old Mill"]\n[Date "2024.12.01"]\n';
    expect(game('1. d4 *', { tags }).split('\n')[0]).toBe('Old Mill Championship, 1 December 2024');
  });
});

describe('where a game leaves the course', () => {
  const exit = (moves: string, side?: string) =>
    game(moves, side === undefined ? {} : { side })
      .split('\n')
      .at(-1);

  test('the course side plays something else than is advised', () => {
    expect(exit('1. e4 e5 2. Nf3 Nc6 3. Bc4 *')).toBe(
      'White leaves the course after 2...Nc6: the course advises 3.Bb5; here 3.Bc4 was played.',
    );
  });

  test('at its own start', () => {
    const fen = 'r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 2 3';
    const tags = `[SetUp "1"]\n[FEN "${fen}"]\n`;
    expect(game('3. Bc4 *', { tags }).split('\n').at(-1)).toBe(
      'White leaves the course at the start: the course advises 3.Bb5; here 3.Bc4 was played.',
    );
  });

  test('the other side plays what the course has no answer to', () => {
    expect(exit('1. e4 e5 2. Nf3 Nc6 3. Bb5 Nf6 *')).toBe(
      'Black leaves the course after 3.Bb5: the course answers 3...a6; here 3...Nf6 was played.',
    );
  });

  test('by another order of moves it is in the course all the same', () => {
    expect(exit('1. Nf3 Nc6 2. e4 e5 3. Bb5 d6 *')).toBe(
      'Black leaves the course after 3.Bb5: the course answers 3...a6; here 3...d6 was played.',
    );
  });

  test('the course ends first', () => {
    expect(exit('1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6 *')).toBe(
      'The course ends after 4.Ba4; the game went on with 4...Nf6.',
    );
  });

  test('a course for both sides advises nothing', () => {
    expect(exit('1. e4 e5 2. Nf3 Nc6 3. Bc4 *', 'both')).toBe(
      'White leaves the course after 2...Nc6: the course has 3.Bb5; here 3.Bc4 was played.',
    );
  });

  test('it never does, or was never in it', () => {
    expect(exit('1. e4 e5 *')).toBe('This game never leaves the course: it ends after 1...e5.');
    expect(exit('1. d4 d5 *')).toBe('This game never enters the course.');
  });

  test('the position is a link, also into another chapter', () => {
    const [, made = ''] = renderCourse([line, '```game\n\n1. e4 e5 2. Nf3 Nc6 3. Bc4 *\n```\n']);
    const page = made.replaceAll(/<\/?span[^>]*>/g, '');
    expect(page).toContain('href="1.html#open">after 2...Nc6 in “Chapter A”</a>');
    expect(page).toContain(`href="#${addressAfter('e4 e5 Nf3 Nc6 Bc4')}">3.Bc4</a>`);
  });
});

describe('the part of a game that is shown', () => {
  const moves =
    '1. e4 {Hidden.} (1. d4 d5) 1... e5 2. Nf3 Nc6 3. Bb5 {Shown.} a6 (3... Nf6 4. O-O) 4. Ba4 d6 5. O-O 1-0';

  test('begins where it is told to: what lies before is one run of bare moves', () => {
    expect(game(moves, { attributes: ' from="open"' }).split('\n').slice(0, 2)).toEqual([
      '1. e4 e5 2. Nf3 Nc6',
      '3. Bb5 Shown. 3... a6 (3... Nf6 4. O-O) 4. Ba4 d6 5. O-O 1–0',
    ]);
  });

  test('ends where it is told to, with the variations on its last move', () => {
    const lines = game(moves, { attributes: ' from=3 to="spanish"' }).split('\n');
    expect(lines[1]).toBe('3. Bb5 Shown. 3... a6 (3... Nf6 4. O-O)');
    expect(lines[2]).toMatch(/^The moves up to 5 are left out\. /);
  });

  test('is the whole game where nothing is told', () => {
    expect(game(moves)).toContain('1. e4 Hidden. (1. d4 d5) 1... e5');
  });
});
