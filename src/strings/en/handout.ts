/** The whole course on one page, for paper. */
export const handout = {
  page: 'To print',
  lead: 'The whole course on one page, for paper: in two columns, with numbered diagrams, and the answers at the end.',
  print: 'Print',
  diagramNumber: (n: number) => `Diagram ${n}`,
  /** Where a reader on paper finds what a link leads to. */
  diagram: (n: number) => `diagram ${n}`,
  chapter: (n: number) => `chapter ${n}`,
};
