import type { shelf as english } from '../en/shelf.ts';

export const shelf: typeof english = {
  courses: 'Cursos',
  pages: 'Páginas de todos los cursos',
  back: (title) => `Todos los cursos: ${title}`,
  notFoundLead: 'Puede que la dirección esté mal escrita o que la página tenga otro nombre.',
  toCourses: 'A todos los cursos',
  practised: { one: '{n} jugada para practicar', other: '{n} jugadas para practicar' },
  news: 'Novedades',
  newsIn: (course) => `en «${course}»`,
  feed: (title) => `${title}: novedades`,
  also: 'Todos los cursos juntos',
  offlineLead:
    'Estas páginas se quedan en su dispositivo en cuanto ha abierto una de ellas, y también cada curso que abra.',
  about: {
    'practice.html': 'Todo lo que toca hoy, de todos los cursos, en una sesión.',
    'search.html': 'Palabras, jugadas y posiciones en todos los cursos.',
    'compare.html':
      'Vea qué curso siguen más lejos sus propias partidas y dónde lo dejaron. Se quedan en su dispositivo.',
  },
  practiceLead:
    'Todo lo que toca hoy, de todos los cursos, en una sesión. Cada respuesta cuenta en su propio curso, como si hubiera practicado allí.',
  searchLead: 'En todos los cursos a la vez.',
  compareLead:
    'Después de jugar: vea qué curso sigue más lejos cada una de sus partidas, dónde lo dejó y qué aconseja allí. Sus partidas se quedan en este dispositivo; nada se envía.',
  coursesInstead: 'Cada curso tiene su propia página para esto:',
  /** What its search says; it travels to the browser. */
  search: {
    inCourses: {
      one: 'Encontrado en un curso.',
      other: 'Encontrado en {n} cursos.',
    },
    nowhere: 'Ningún curso lo tiene.',
    notLoaded: 'No se pudo cargar «{course}».',
  },
  /** What its practice says; it travels to the browser. */
  practice: {
    some: 'Solo {n} de ellas',
    notBegun:
      'Todavía no ha practicado ninguno de estos cursos. Empiece en uno: lo que vuelve se pregunta entonces también aquí.',
    byCourse: 'Curso por curso',
    byCourseHelp:
      'Las jugadas nuevas se aprenden en la práctica de cada curso, donde también puede guardar su progreso en un archivo.',
    unmet: 'sin empezar',
    twins: {
      one: 'Una de ellas la preguntan dos cursos con la misma respuesta: se pregunta una vez y cuenta en ambos.',
      other:
        '{n} de ellas las preguntan varios cursos con la misma respuesta: cada una se pregunta una vez y cuenta en todos.',
    },
  },
  /** What its comparison of games says; it travels to the browser. */
  compare: {
    none: 'En ningún curso',
    never: 'Esta partida no entra en ninguno de los cursos.',
    followed: {
      one: 'Una partida lo siguió más lejos que a los demás.',
      other: '{n} partidas lo siguieron más lejos que a los demás.',
    },
  },
  talk: {
    goOn: 'Seguir: {title}',
    due: { one: '{n} jugada toca hoy', other: '{n} jugadas tocan hoy' },
    dueToday: { one: 'Hoy toca {n} jugada.', other: 'Hoy tocan {n} jugadas.' },
    dueWithin: { one: 'De un solo curso.', other: 'De {n} cursos.' },
    practise: 'Practicarlas ahora',
  },
};
