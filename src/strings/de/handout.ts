import type { handout as english } from '../en/handout.ts';

export const handout: typeof english = {
  page: 'Zum Drucken',
  lead: 'Der ganze Kurs auf einer Seite, für Papier: zweispaltig, mit nummerierten Diagrammen und den Lösungen am Schluss.',
  print: 'Drucken',
  diagramNumber: (n) => `Diagramm ${n}`,

  diagram: (n) => `Diagramm ${n}`,
  chapter: (n) => `Kapitel ${n}`,
  /** Where it stands on paper; the browser fills the gap. */
  onPage: 'Seite {n}',
  paper: 'Papier',
  sizes: { a4: 'A4', letter: 'Letter (USA)' },
  paperHolds: 'Die Seitenzahlen gelten für dieses Papier bei 100 %.',
};
