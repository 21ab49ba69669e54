import type { edition as english } from '../en/edition.ts';

export const edition: typeof english = {
  isThere: 'Hay una nueva edición de este curso.',
  load: 'Cargarla',
};
