/** Where a position comes from; the initial one unless said. */
export interface PositionProps {
  fen?: string;
  /** Moves that lead to it: `1. e4 e5 2. Nf3`. */
  after?: string;
  /** A name in a course of the site, as `:here[…]` gives it. */
  at?: string;
  /** Which course has that name, by its folder or its path; needed where the site has several. */
  course?: string;
  /** The side at the bottom of the board. */
  view?: 'white' | 'black';
}

/** A position, with moves to play through. */
export interface BoardProps extends PositionProps {
  /** Movetext as in a PGN file; the board goes along its main line. */
  moves?: string;
  /** Where it begins: before the moves, behind the last, or after so many of them. */
  show?: 'start' | 'end' | number;
}

/** Moves as text, with variations and comments, each of which leads to the board beside it. */
export interface MovesProps extends BoardProps {
  moves: string;
}

/** A still position. */
export interface DiagramProps extends PositionProps {
  caption?: string;
  /** Instead of the description of the position that is made else. */
  alt?: string;
  /** Squares: `e5 f4`. */
  mark?: string;
  /** Arrows: `f3-e5`. */
  plan?: string;
  threat?: string;
  guard?: string;
  /** A move of the other side that is played first. */
  before?: string;
}

/** A question that is answered on the board. */
export interface ExerciseProps extends PositionProps {
  ask: string;
  /** A line or several; the reader finds the moves of the side to move. */
  answer: string | string[];
  also?: string | string[];
  /** Moves with what is wrong with them: `Nf6 {loses the pawn}`. */
  wrong?: string | string[];
  hint?: string | string[];
  before?: string;
}
