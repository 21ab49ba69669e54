import type { handout as english } from '../en/handout.ts';

export const handout: typeof english = {
  page: 'Zum Drucken',
  lead: 'Der ganze Kurs auf einer Seite, für Papier: zweispaltig, mit nummerierten Diagrammen und den Lösungen am Schluss.',
  print: 'Drucken',
  diagramNumber: (n) => `Diagramm ${n}`,

  diagram: (n) => `Diagramm ${n}`,
  chapter: (n) => `Kapitel ${n}`,
};
