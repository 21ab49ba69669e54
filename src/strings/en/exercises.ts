/** The page of all exercises. */
export const exercises = {
  page: 'Exercises',
  lead: 'Every exercise of the course. What you have solved is kept in this browser.',
  begin: 'Begin',

  /** What it says of the reader's results; gaps in braces. It travels to the browser as data. */
  results: {
    begin: 'Begin',
    goOn: 'Go on with those not solved yet',
    again: 'Solve them again',
    solved: '{n} of {count} solved',
    grades: {
      once: 'solved at once',
      tries: 'solved after tries or hints',
      shown: 'the answer was shown',
      none: 'not solved yet',
    },
  },
};
