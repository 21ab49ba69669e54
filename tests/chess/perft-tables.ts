/**
 * Published counts of the move paths of a position, by depth. The positions and counts are those
 * of chessprogramming.org, "Perft Results", as copied in the examples of docs.rs/ruchess 0.0.5 and
 * at chessprogramming.net/perfect-perft; those of the initial position are also OEIS A048987.
 */
export interface PerftTable {
  readonly name: string;
  readonly fen: string;
  /** Paths of 1, 2, … moves. */
  readonly nodes: readonly number[];
}

export const perftTables: readonly PerftTable[] = [
  {
    name: 'initial position',
    fen: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
    nodes: [20, 400, 8902, 197281],
  },
  {
    name: 'position 2 ("Kiwipete")',
    fen: 'r3k2r/p1ppqpb1/bn2pnp1/3PN3/1p2P3/2N2Q1p/PPPBBPPP/R3K2R w KQkq - 0 1',
    nodes: [48, 2039, 97862],
  },
  {
    name: 'position 3',
    fen: '8/2p5/3p4/KP5r/1R3p1k/8/4P1P1/8 w - - 0 1',
    nodes: [14, 191, 2812, 43238, 674624],
  },
  {
    name: 'position 4',
    fen: 'r3k2r/Pppp1ppp/1b3nbN/nP6/BBP1P3/q4N2/Pp1P2PP/R2Q1RK1 w kq - 0 1',
    nodes: [6, 264, 9467, 422333],
  },
  {
    name: 'position 5',
    fen: 'rnbq1k1r/pp1Pbppp/2p5/8/2B5/8/PPP1NnPP/RNBQK2R w KQ - 1 8',
    nodes: [44, 1486, 62379],
  },
  {
    name: 'position 6',
    fen: 'r4rk1/1pp1qppp/p1np1n2/2b1p1B1/2B1P1b1/P1NP1N2/1PP1QPPP/R4RK1 w - - 0 10',
    nodes: [46, 2079, 89890],
  },
];

/** chessprogramming.net/perfect-perft: an en-passant capture that would open the king's rank. */
export const illegalEnPassant = {
  fen: '3k4/3p4/8/K1P4r/8/8/8/8 b - - 0 1',
  depth: 6,
  nodes: 1_134_888,
};
