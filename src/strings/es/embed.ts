import type { embed as english } from '../en/embed.ts';

export const embed: typeof english = {
  embed: {
    open: 'Abrir en el curso',
    page: 'Tableros para otros sitios',
    lead: 'Copie el texto de un recuadro en el código de su página.',
    choose: 'Elija el capítulo en el que está la posición.',
    boards: { one: '{n} tablero', other: '{n} tableros' },
    noSite:
      'Ponga la dirección del curso publicado en lugar de ADDRESS, o indique «site» en course.yaml y genere el sitio de nuevo.',
    frame: 'Un marco con un tablero para recorrer las jugadas',
    element: 'Lo mismo como parte de la página, con un script y sin marco',
    picture: 'Una imagen con un enlace, sin ningún script',
    script: 'Una vez por página, antes de sus tableros:',
  },
};
