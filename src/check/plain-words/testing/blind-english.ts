import { lines, type Passage, pawnEnding } from './corpus.ts';

/** Written before the rule, and not changed since. */
export const blindEnglish: readonly Passage[] = [
  {
    moves: lines.isolani,
    sentences: [
      ['true', 'The pawn on d5 is isolated, and the knight on d4 stands right in front of it.'],
      ['true', "White's bishop on g2 looks straight at the pawn on d5."],
      ['false', 'The knight on e4 is the pride of the black position.'],
      ['false', "White's knight on d5 cannot be driven away."],
      ['false', 'The isolated pawn on d4 is a long-term weakness.'],
      ['true', 'The c-file is open and both sides have a rook ready for it.'],
      ['false', 'The open d-file belongs to whoever puts a rook there first.'],
      ['false', 'Black has not castled yet, and the king may come to feel it.'],
      ['true', 'Both sides have castled.'],
      ['true', 'It is Black to move.'],
      ['false', 'White to move: how does he increase the pressure?'],
      ['false', 'White is a pawn up, but the bishops compensate for it.'],
      ['true', 'Material is level.'],
      ['silent', 'A knight on e4 would be worth more than the pawn.'],
      ['silent', 'If the knight on c6 leaves, the bishop on b5 will be missed.'],
      ['silent', 'Black dreams of a knight on e4 and a rook on e8.'],
      ['silent', 'White wants to trade the dark-squared bishops and then double rooks on d1.'],
      ['silent', 'Soon the rook on e8 will stare down the file.'],
      ['silent', 'Without the knight on c6 the pawn falls.'],
      [
        'silent',
        'In the main line of the Queen’s Gambit Declined the bishop on c8 is a sad sight.',
      ],
      ['silent', 'After 10...h6 11.Bf4 the bishop on f4 eyes c7.'],
      ['silent', 'Black threatens nothing yet.'],
      ['false', "Black's bishop on d6 takes aim at h2."],
      ['true', 'The knight on f6 is attacked by the bishop on g5.'],
      ['false', 'The bishop on f4 attacks the knight.'],
    ],
  },
  {
    moves: lines.exchange,
    sentences: [
      ['true', 'Black has doubled pawns on the c-file and the two bishops.'],
      ['false', 'Black has doubled pawns on the b-file.'],
      ['true', 'White has castled.'],
      ['false', 'Both sides have castled.'],
      ['silent', 'Black will castle long.'],
      ['silent', 'White would like to play d2-d4 and get rid of the pawn on d4.'],
      ['false', 'The pawn on d6 holds the centre together.'],
      ['true', 'The pawn on e5 is no longer defended.'],
      ['silent', 'The bishop on b5 used to pin the knight on c6.'],
      ['silent', 'Can Black hold the knight on e4?'],
      [
        'false',
        'The queen on d1 stands opposite a queen on d8, and the open d-file invites a trade.',
      ],
    ],
  },
  {
    moves: lines.mate,
    sentences: [
      ['true', 'Checkmate: the queen on f7 is guarded by the bishop on c4.'],
      ['false', 'The bishop on b3 guards the queen.'],
      ['false', "White's queen on f6 gives mate."],
    ],
  },
  {
    moves: lines.gambit,
    sentences: [
      ['true', 'Black is a pawn up.'],
      ['false', 'White is a pawn up.'],
      ['false', 'The bishop on b4 is safe for the moment, and Black is two pawns up.'],
      ['silent', 'White hopes to win back the pawn on e5 with d2-d4.'],
      ['silent', 'White is prepared to be a pawn down for the attack.'],
      ['false', 'White is in check.'],
    ],
  },
  {
    moves: lines.trap,
    sentences: [
      ['true', 'White to play and mate in one.'],
      ['false', 'It is Black to move.'],
      ['true', 'White mates with 7.Nd5, and Black has a whole extra queen to look at.'],
      ['false', 'Now 7.Nf5 is mate.'],
      ['silent', 'Taking the queen was greedy.'],
    ],
  },
  {
    moves: lines.cornered,
    sentences: [
      ['true', 'Check, and the king has only one square.'],
      ['true', 'Now 6...Ke7 is the only legal move.'],
      ['false', 'Now 6...Kd7 is the only move.'],
      ['false', 'Black is mated.'],
    ],
  },
  {
    fen: pawnEnding,
    sentences: [
      ['true', 'White has a passed pawn on d5 and is a pawn ahead.'],
      ['false', 'The passed pawn on d6 decides.'],
      ['true', 'The open c-file means nothing with no rooks on the board.'],
      ['false', 'The a-pawn is passed and runs.'],
      ['silent', 'A passed pawn must be pushed.'],
    ],
  },
];
