import type { book as english } from '../en/book.ts';

export const book: typeof english = {
  boardAfter: (move) => `Nach ${move}`,
  cover: 'Umschlag',
  titlePage: 'Titelseite',
  landmarks: 'Wegmarken',
  text: 'Text',
  toAnswer: 'Zur Lösung',
  courseOnline: 'Der Kurs im Netz:',
  accessibility:
    'Jedes Brett ist in Worten beschrieben, und alle Züge stehen im Text. Das Buch braucht keine Farben, keinen Ton und kein Skript.',
};
