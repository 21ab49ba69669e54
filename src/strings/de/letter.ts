import type { letter as english } from '../en/letter.ts';

export const letter: typeof english = {
  unsubscribe: 'Diesen Verteiler verlassen',
  fromCourse: 'Aus dem Kurs {course}.',
  fromCourseBy: 'Aus dem Kurs {course} von {author}.',
  withBoard: 'Mit einem Brett zum Nachspielen:',
  positionsTitle: 'Stellungen aus dem Kurs',
  coursePlays: (move) => `Der Kurs spielt hier ${move}.`,
  courseAnswers: (moves) => `Der Kurs hat eine Antwort auf ${moves}.`,

  textBoards: (pieces) =>
    `Auf den Brettern sind große Buchstaben die Figuren von Weiß und kleine die von Schwarz: ${pieces}. Ein Punkt ist ein leeres Feld.`,
  pawnLetter: 'B',
  marked: 'Markiert',
  arrows: { plan: 'Plan', threat: 'Drohung', guard: 'Deckung' },
};
