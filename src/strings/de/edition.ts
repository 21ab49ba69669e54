import type { edition as english } from '../en/edition.ts';

export const edition: typeof english = {
  isThere: 'Von diesem Kurs gibt es eine neue Ausgabe.',
  load: 'Jetzt laden',
};
