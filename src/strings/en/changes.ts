/** What changed between two editions: the page, the feed, the terminal. Gaps in braces. */
export const changes = {
  changes: {
    page: 'What is new',
    lead: 'What changed in this course, the latest first.',
    feed: (course: string) => `${course}: what is new`,
    titleOf: (date: string) => `What is new on ${date}`,
    nothing: 'Nothing changed on the board.',
    side: {
      white: 'The course is for White now.',
      black: 'The course is for Black now.',
      both: 'The course is for both sides now.',
    },
    newChapter: (positions: number) =>
      `A new chapter with ${positions} new ${positions === 1 ? 'position' : 'positions'}.`,
    droppedChapter: (positions: number) =>
      `This chapter was taken out, and ${positions} ${positions === 1 ? 'position' : 'positions'} with it.`,
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
    why: (reason: string) => `Why: ${reason}`,
    replyAnswered: '{at}: {move}, and the answer is {answer}.',
    moveAdded: '{at}: {move}.',
    lineAdded: 'From a position of its own, {at}: {move}.',
    moveDropped: '{at}: {move}.',
    calledBad: '{at}: {move} is called a bad move now.',
    calledBadNoMore: '{at}: {move} is no longer called a bad move.',
    assessment: '{at}: {now}, no longer {before}.',
    positions: (count: number) => `${count} new positions`,
    positionsDropped: (count: number) => `${count} positions`,
    exercise: {
      new: '{exercise} is new.',
      changed: '{exercise} has another answer, or judges other moves.',
      dropped: '{exercise} was taken out.',
    },
    pattern: {
      new: '{pattern} is new.',
      changed: '{pattern} has other pieces.',
      dropped: '{pattern} was taken out.',
    },
  },
};
