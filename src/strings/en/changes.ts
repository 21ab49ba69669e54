/** What changed between two editions: the page, the feed, the terminal. Gaps in braces. */
export const changes = {
  changes: {
    page: 'What is new',
    lead: 'What changed in this course, the latest first.',
    feed: (course: string) => `${course}: what is new`,
    subscribe: 'The news as a feed',
    titleOf: (date: string) => `What is new on ${date}`,
    nothing: 'Nothing changed on the board.',
    side: {
      white: 'The course is for White now.',
      black: 'The course is for Black now.',
      both: 'The course is for both sides now.',
    },
    newChapter: {
      one: 'A new chapter with one new position.',
      other: 'A new chapter with {n} new positions.',
    },
    droppedChapter: {
      one: 'This chapter was taken out, and one position with it.',
      other: 'This chapter was taken out, and {n} positions with it.',
    },
    kinds: {
      advice: 'Other advice',
      reply: 'New replies covered',
      extended: 'Lines that go on',
      start: 'New lines',
      option: 'New alternatives',
      judged: 'Moves judged anew',
      assessment: 'Other assessments',
      dropped: 'Taken out',
      exercise: 'Exercises',
      pattern: 'Patterns',
    },
    advice: '{at}: {now}, no longer {before}.',
    adviceGiven: '{at}: the course now advises {now}.',
    adviceWithdrawn: '{at}: {before} is no longer advised.',
    /** An erratum. */
    mistake: (move: string, reason: string | undefined) =>
      reason === undefined ? `${move} was a mistake.` : `${move} was a mistake: ${reason}`,
    why: (reason: string) => `Why: ${reason}`,
    replyAnswered: '{at}: {move}, and the answer is {answer}.',
    moveAdded: '{at}: {move}.',
    ownStart: 'from a position of its own',
    moveDropped: '{at}: {move}.',
    calledBad: '{at}: {move} is called a bad move now.',
    calledBadNoMore: '{at}: {move} is no longer called a bad move.',
    assessment: '{at}: {now}, no longer {before}.',
    positions: { one: '{n} new position', other: '{n} new positions' },
    positionsDropped: { one: '{n} position', other: '{n} positions' },
    exercise: {
      new: '{exercise} is new.',
      changed: '{exercise} has another answer, or judges other moves.',
      dropped: '{exercise} was taken out.',
    },
    pattern: {
      new: '{pattern} is new.',
      changed: '{pattern} has other pieces.',
      said: 'What the course says of {pattern} has changed.',
      dropped: '{pattern} was taken out.',
    },
  },
};
