import type { exercises as english } from '../en/exercises.ts';

/** The page of all exercises. */
export const exercises: typeof english = {
  page: 'Aufgaben',
  lead: 'Alle Aufgaben des Kurses. Was Sie gelöst haben, bleibt in diesem Browser.',
  begin: 'Beginnen',

  /** What it says of the reader's results; gaps in braces. It travels to the browser as data. */
  results: {
    begin: 'Beginnen',
    goOn: 'Weiter mit den ungelösten',
    again: 'Noch einmal lösen',
    solved: '{n} von {count} gelöst',
    grades: {
      once: 'auf Anhieb gelöst',
      tries: 'nach Versuchen oder Hinweisen gelöst',
      shown: 'Lösung gezeigt',
      none: 'noch nicht gelöst',
    },
  },
};
