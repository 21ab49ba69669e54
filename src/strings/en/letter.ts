/** What a letter says beside the author's text, and what its plain text says of boards. Gaps in braces. */
export const letter = {
  unsubscribe: 'Leave this list',
  fromCourse: 'From the course {course}.',
  fromCourseBy: 'From the course {course} by {author}.',
  withBoard: 'With a board to play the moves on:',
  positionsTitle: 'Positions from the course',
  coursePlays: (move: string) => `The course plays ${move} here.`,
  courseAnswers: (moves: string) => `The course has an answer to ${moves}.`,

  textBoards: (pieces: string) =>
    `In the boards capital letters are White's pieces and small letters Black's: ${pieces}. A dot is an empty square.`,
  /** The letter of a pawn in a board of letters; in moves it has none. */
  pawnLetter: 'P',
  marked: 'Marked',
  arrows: { plan: 'Plan', threat: 'Threat', guard: 'Guard' },
};
