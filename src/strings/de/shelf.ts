import type { shelf as english } from '../en/shelf.ts';

export const shelf: typeof english = {
  courses: 'Kurse',
  pages: 'Seiten aller Kurse',
  back: (title) => `Alle Kurse: ${title}`,
  notFoundLead: 'Vielleicht ist die Adresse falsch geschrieben, oder die Seite heißt jetzt anders.',
  toCourses: 'Zu allen Kursen',
  practised: { one: '{n} Zug zum Üben', other: '{n} Züge zum Üben' },
  news: 'Was neu ist',
  newsIn: (course) => `in „${course}“`,
  feed: (title) => `${title}: Was neu ist`,
  also: 'Alle Kurse zusammen',
  offlineLead:
    'Diese Seiten bleiben auf Ihrem Gerät, sobald Sie eine davon geöffnet haben, und ebenso jeder Kurs, den Sie öffnen.',
  about: {
    'practice.html': 'Was heute fällig ist, aus allen Kursen, in einer Sitzung.',
    'search.html': 'Wörter, Züge und Stellungen in allen Kursen.',
    'compare.html':
      'Welchem Kurs Ihre eigenen Partien am weitesten folgen, und wo sie ihn verlassen haben. Sie bleiben auf Ihrem Gerät.',
  },
  practiceLead:
    'Was heute fällig ist, aus allen Kursen, in einer Sitzung. Jede Antwort zählt in ihrem eigenen Kurs, als hätten Sie dort geübt.',
  searchLead: 'In allen Kursen zugleich.',
  compareLead:
    'Nach dem Spiel: welchem Kurs jede Ihrer Partien am weitesten folgt, wo sie ihn verlassen hat und was er dort rät. Ihre Partien bleiben auf diesem Gerät; nichts wird verschickt.',
  coursesInstead: 'Jeder Kurs hat dafür eine eigene Seite:',
  /** What its search says; it travels to the browser. */
  search: {
    inCourses: {
      one: 'In einem Kurs gefunden.',
      other: 'In {n} Kursen gefunden.',
    },
    nowhere: 'Kein Kurs hat das.',
    notLoaded: '„{course}“ ließ sich nicht laden.',
  },
  /** What its practice says; it travels to the browser. */
  practice: {
    some: 'Nur {n} davon',
    notBegun:
      'Sie haben noch in keinem dieser Kurse geübt. Fangen Sie in einem an: was wiederkommt, wird dann auch hier gefragt.',
    byCourse: 'Kurs für Kurs',
    byCourseHelp:
      'Neue Züge lernen Sie beim Üben des einzelnen Kurses; dort lässt sich auch Ihr Stand in einer Datei sichern.',
    unmet: 'nicht begonnen',
    twins: {
      one: 'Einen davon fragen zwei Kurse mit derselben Antwort: er wird einmal gefragt und zählt in beiden.',
      other:
        '{n} davon fragen mehrere Kurse mit derselben Antwort: jeder wird einmal gefragt und zählt in allen.',
    },
  },
  /** What its comparison of games says; it travels to the browser. */
  compare: {
    none: 'In keinem Kurs',
    never: 'Diese Partie kommt in keinen der Kurse.',
    followed: {
      one: 'Eine Partie ist ihm am weitesten gefolgt.',
      other: '{n} Partien sind ihm am weitesten gefolgt.',
    },
  },
  talk: {
    goOn: 'Weiterlesen: {title}',
    due: { one: '{n} Zug fällig', other: '{n} Züge fällig' },
    dueToday: { one: '{n} Zug ist heute fällig.', other: '{n} Züge sind heute fällig.' },
    dueWithin: { one: 'Alle aus einem Kurs.', other: 'Aus {n} Kursen.' },
    practise: 'Jetzt üben',
  },
};
