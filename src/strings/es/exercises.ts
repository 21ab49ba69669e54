import type { exercises as english } from '../en/exercises.ts';

/** The page of all exercises. */
export const exercises: typeof english = {
  page: 'Ejercicios',
  lead: 'Todos los ejercicios del curso. Lo que usted resuelva queda en este navegador.',
  begin: 'Empezar',

  /** What it says of the reader's results; gaps in braces. It travels to the browser as data. */
  results: {
    begin: 'Empezar',
    goOn: 'Seguir con los no resueltos',
    again: 'Resolverlos de nuevo',
    solved: '{n} de {count} resueltos',
    grades: {
      once: 'resuelto a la primera',
      tries: 'resuelto tras varios intentos o con pistas',
      shown: 'se mostró la solución',
      none: 'sin resolver',
    },
  },
};
