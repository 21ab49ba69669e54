/** What an e-book says beside the author's text, and what stands below its boards. */
export const book = {
  boardAfter: (move: string) => `After ${move}`,
  cover: 'Cover',
  titlePage: 'Title page',
  landmarks: 'Landmarks',
  text: 'Text',
  /** Stands below an exercise. */
  toAnswer: 'To the answer',
  courseOnline: 'The course on the web:',
  /** For readers who choose books by how they can be read. */
  accessibility:
    'Every board has a description in words, and all moves stand in the text. The book needs no colours, no sound and no script.',
};
