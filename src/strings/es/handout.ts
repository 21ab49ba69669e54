import type { handout as english } from '../en/handout.ts';

export const handout: typeof english = {
  page: 'Para imprimir',
  lead: 'Todo el curso en una página, para papel: a dos columnas, con los diagramas numerados y las soluciones al final.',
  print: 'Imprimir',
  diagramNumber: (n) => `Diagrama ${n}`,

  diagram: (n) => `diagrama ${n}`,
  chapter: (n) => `capítulo ${n}`,
  /** Where it stands on paper; the browser fills the gap. */
  onPage: 'página {n}',
  paper: 'Papel',
  sizes: { a4: 'A4', letter: 'Carta' },
  paperHolds: 'Los números de página valen para este papel al 100 %.',
};
