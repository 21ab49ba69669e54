/**
 * Sentences of chess prose with what a careful reader would say of each: our own, no real players. They are
 * the measure of the rule `words-false`.
 */

/**
 * - `true`: the sentence states something of the position, and it is so.
 * - `false`: it states something of the position, and the board says otherwise.
 * - `silent`: it speaks of plans, the past, other lines, or of what no board decides.
 */
export type Label = 'true' | 'false' | 'silent';

export interface Passage {
  /** Movetext from the initial position, or from `fen`. */
  readonly moves?: string;
  readonly fen?: string;
  /** Where each sentence stands: as a comment behind the last move, or as prose below the block. */
  readonly stands?: 'comment' | 'prose';
  /** What else stands in the chapter, below. */
  readonly below?: string;
  readonly sentences: readonly (readonly [label: Label, sentence: string])[];
}

/** The positions that most passages stand in, by what they show. */
export const lines = {
  /** White has just recaptured on d4: Black has a lone pawn on d5, the c-file is open. */
  isolani:
    '1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5 exd5 5. Nf3 Nc6 6. g3 Nf6 7. Bg2 Be7 8. O-O O-O 9. Bg5 cxd4 10. Nxd4',
  /** Black has two pawns on the c-file and both bishops; White has castled. */
  exchange: '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6 5. O-O',
  /** Mate on f7. */
  mate: '1. e4 e5 2. Qh5 Nc6 3. Bc4 Nf6 4. Qxf7#',
  /** Black has taken a pawn on b4. */
  gambit: '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. b4 Bxb4 5. c3 Ba5',
  /** White mates in one with the knight. */
  trap: '1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. Nc3 g6 5. Nxe5 Bxd1 6. Bxf7+ Ke7',
  /** The same, a move earlier: Black has one legal move. */
  cornered: '1. e4 e5 2. Nf3 d6 3. Bc4 Bg4 4. Nc3 g6 5. Nxe5 Bxd1 6. Bxf7+',
  /** A check that only the queen can meet. */
  elephant: '1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. Bg5 Nbd7 5. cxd5 exd5 6. Nxd5 Nxd5 7. Bxd8 Bb4+',
} as const;

/** Kings and pawns: White has a lone passed pawn on d5 and one pawn more. */
export const pawnEnding = '4k3/pp3ppp/8/3P4/8/8/PP3PPP/4K3 w - - 0 1';
