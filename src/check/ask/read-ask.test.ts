/** Questions as authors ask them, with what they say for sure. Common practice, no source. */
import type { PhrasingContent } from 'mdast';
import { describe, expect, test } from 'vitest';
import type { Color } from '../../chess/index.ts';
import { readAsk } from './read-ask.ts';

function read(text: string, turn: Color = 'white') {
  const content: PhrasingContent[] = [{ type: 'text', value: text }];
  const { toMove, goals } = readAsk(content, 'chapters/1.md', turn);
  return {
    toMove: toMove?.color,
    goals: goals.map((goal) => {
      if (goal.kind === 'win') return `win ${goal.pawns}`;
      return goal.kind === 'mate' && goal.moves ? `mate in ${goal.moves}` : goal.kind;
    }),
  };
}

describe('who is to move', () => {
  test.each([
    ['White to move.', 'white'],
    ['Black to play and win.', 'black'],
    ['It is Black’s turn: what now?', 'black'],
    ['The centre is open. White is to move!', 'white'],
    ['What does Black play?', 'black'],
    ['Which move should White play here?', 'white'],
    ['How does Black continue?', 'black'],
    ['Find White’s best move.', 'white'],
    ['Find the best move for Black.', 'black'],
    ['Weiß am Zug.', 'white'],
    ['Wie setzt Schwarz fort?', 'black'],
    ['Finde den besten Zug für Weiß.', 'white'],
    ['¿Cómo siguen las negras?', 'black'],
    ['La mejor jugada de las blancas.', 'white'],
    ['Schwarz ist am Zug und steht schlechter.', 'black'],
    ['Schwarz zieht und gewinnt.', 'black'],
    ['Was spielt Weiß?', 'white'],
    ['Juegan las blancas.', 'white'],
    ['¿Qué juegan las negras?', 'black'],
    ['Las negras juegan y ganan.', 'black'],
    ['Turno de negras.', 'black'],
  ])('%s', (text, color) => expect(read(text).toMove).toBe(color));

  test.each([
    'What is the best plan for White?',
    'If it were White to move, he would take.',
    'After 5.Nf3 it is Black to move.',
    'What does White threaten?',
    'What does White play against it?',
    'It takes courage for Black to play g5.',
    'White to move would win; with Black to move it is a draw.',
    'How does White prepare the centre?',
    'Wäre Weiß am Zug, stünde er gut.',
    'Schwarz zieht den Springer zurück.',
    'Si juegan blancas, ganan.',
    'The club plays with white to movement.',
  ])('nothing for sure: %s', (text) => expect(read(text).toMove).toBeUndefined());
});

describe('what is to be done', () => {
  test.each([
    ['Mate in two!', ['mate in 2']],
    ['White mates in 3.', ['mate in 3']],
    ['Matt in zwei Zügen.', ['mate in 2']],
    ['Mate en dos.', ['mate in 2']],
    ['Find the mate.', ['mate']],
    ['White to play and mate.', ['mate']],
    ['Weiß zieht und setzt matt.', ['mate']],
    ['Blancas juegan y dan mate.', ['mate']],
    ['Give check with the right piece.', ['check']],
    ['Gib Schach!', ['check']],
    ['Da jaque con la dama.', ['check']],
    ['How does White win a pawn?', ['win 1']],
    ['Win the exchange.', ['win 1']],
    ['Gewinne eine Figur.', ['win 2']],
    ['Wie kann Weiß die Dame gewinnen?', ['win 2']],
    ['¿Cómo ganan las blancas una pieza?', []],
    ['Ganar dos peones.', ['win 2']],
    ['Gana un peón.', ['win 1']],
    ['White to move. How does White win a piece?', ['win 2']],
  ])('%s', (text, goals) => expect(read(text).goals).toEqual(goals));

  test.each([
    'How does White stop the mate in two?',
    'Black threatens mate in one.',
    'Black mates in two unless White sees it.',
    'Can White win a pawn?',
    'Does White win a piece?',
    'How does White win back the pawn?',
    'White wants to win a pawn.',
    'Why not win the exchange?',
    'Gewinnt Weiß einen Bauern?',
    '¿Gana un peón?',
    'Wie verhindert Weiß das Matt in zwei?',
    'Cómo evitar el mate en dos.',
    'Black has won a pawn.',
    'Stalemate in two is no goal.',
  ])('nothing for sure: %s', (text) => expect(read(text).goals).toEqual([]));
});
