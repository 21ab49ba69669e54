/** The whole course on one page, for paper. */
export const handout = {
  page: 'To print',
  lead: 'The whole course on one page, for paper: in two columns, with numbered diagrams, and the answers at the end.',
  print: 'Print',
  diagramNumber: (n: number) => `Diagram ${n}`,
  /** Where a reader on paper finds what a link leads to. */
  diagram: (n: number) => `diagram ${n}`,
  chapter: (n: number) => `chapter ${n}`,
  /** Where it stands on paper; the browser fills the gap. */
  onPage: 'page {n}',
  paper: 'Paper',
  sizes: { a4: 'A4', letter: 'Letter' },
  paperHolds: 'The numbers of the pages hold for this paper at 100 %.',
};
