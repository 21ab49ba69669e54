import type { practice as english } from '../en/practice.ts';

export const practice: typeof english = {
  practicePage: 'Práctica',
  practiceLead:
    'Juegue de memoria las jugadas del curso. Lo que sabe se pregunta cada vez menos; lo que falla vuelve mañana.',
  practiceNeedsScript:
    'Para practicar hace falta JavaScript, que está desactivado en este navegador.',

  practice: {
    moves: { one: 'una jugada', other: '{n} jugadas' },
    untouched:
      'Todavía no ha empezado. El curso recomienda {moves}. Cada una se le enseña una vez, con lo que el autor dice de ella; después se le pregunta.',
    due: { one: 'Una jugada toca hoy.', other: '{n} jugadas tocan hoy.' },
    nothingDue: 'Hoy no toca nada.',
    changed: {
      one: 'Para una de ellas el curso recomienda ahora otra cosa.',
      other: 'Para {n} de ellas el curso recomienda ahora otra cosa.',
    },
    fresh: {
      one: 'Una jugada es todavía nueva para usted.',
      other: '{n} jugadas son todavía nuevas para usted.',
    },
    allSeen: 'Ha visto todas las jugadas de estos capítulos.',
    ahead: 'Mañana tocan {tomorrow}; en siete días, {week}.',
    beginDue: { one: 'Jugar la que toca', other: 'Jugar las {n} que tocan' },
    beginNew: { one: 'Aprender una jugada nueva', other: 'Aprender {n} jugadas nuevas' },
    noneChosen: 'Ningún capítulo está marcado. Marque los que quiera practicar.',

    overview: 'Lo que sabe',
    overviewHelp: 'Solo se practican los capítulos marcados.',
    chapter: 'Capítulo',
    known: 'Sabidas',
    learning: 'En curso',
    unseen: 'Nuevas',
    dueNow: 'Tocan',
    whole: 'Todo el curso',
    wholeHelp: 'Una jugada que está en varios capítulos cuenta una vez.',
    adopted: {
      one: 'Una de estas jugadas ya la ha practicado, en este curso con otro nombre o en otro curso de este sitio. No se pregunta como nueva.',
      other:
        '{n} de estas jugadas ya las ha practicado, en este curso con otro nombre o en otro curso de este sitio. No se preguntan como nuevas.',
    },
    resting: {
      one: 'Una jugada que aprendió no está en esta edición del curso. Descansa, y vuelve si el curso la recupera.',
      other:
        '{n} jugadas que aprendió no están en esta edición del curso. Descansan, y vuelven si el curso las recupera.',
    },

    keeping: 'Su progreso',
    keepingHelp:
      'Se guarda en este navegador y no se envía a ninguna parte. Para llevarlo a otro navegador, guárdelo en un archivo y lea allí el archivo.',
    save: 'Guardar en un archivo',
    load: 'Leer de un archivo',
    forget: 'Olvidarlo todo',
    forgetHelp:
      'Todo lo que ha aprendido en este curso se olvida en este navegador, y usted empieza de nuevo. No se puede deshacer. Un archivo que haya guardado se conserva y se puede volver a leer.',
    forgetNow: 'Olvidarlo ahora',
    forgotten: 'Olvidado. Empieza de nuevo.',
    notForgotten: 'El navegador no deja que la página cambie lo guardado. No se ha olvidado nada.',
    taken: {
      one: 'Leído: se tomó una jugada del archivo.',
      other: 'Leído: se tomaron {n} jugadas del archivo.',
    },
    takenOther: {
      one: 'Leído: el archivo es de otro curso, «{title}». Una de sus jugadas se pregunta también aquí y se tomó.',
      other:
        'Leído: el archivo es de otro curso, «{title}». {n} de sus jugadas se preguntan también aquí y se tomaron.',
    },
    mended: {
      one: 'Una de ellas tenía una fecha o un número imposible; se ha corregido.',
      other: '{n} de ellas tenían una fecha o un número imposible; se han corregido.',
    },
    notTaken: 'Leído: nada en el archivo es posterior a lo que hay aquí.',
    notProgress: 'Este archivo no contiene el progreso de una práctica. No se ha cambiado nada.',
    cutShort:
      'Este archivo está cortado. No se ha cambiado nada. Vuelva a guardarlo en el lugar de donde viene.',
    otherCourse: 'Este archivo es de otro curso, «{title}». No se ha cambiado nada.',
    newer:
      'Este archivo se guardó con una edición posterior de esta página. No se ha cambiado nada. Recargue la página e inténtelo de nuevo.',
    unreadable: 'No se puede leer este archivo. No se ha cambiado nada.',
    denied:
      'Este navegador no deja que la página guarde nada. Puede practicar igualmente; guarde su progreso en un archivo antes de irse.',
    full: 'El navegador no tiene más sitio: lo que responda no se guarda. Guarde su progreso en un archivo antes de irse, o haga sitio.',
    lost: 'El navegador ha cerrado lo que guarda para esta página. La página lo intenta de nuevo y entonces escribe todo lo que haya respondido. Quédese en la página hasta que desaparezca este mensaje, o guarde su progreso en un archivo.',

    help: 'Cómo funciona',
    helpText: [
      'Usted juega con un bando y la página con el otro, con las jugadas que trata el curso. Las jugadas que no tocan se hacen por usted por el camino.',
      'No hay que poner notas. Una jugada que encuentra al momento vuelve al cabo de unos días, luego de semanas, luego de meses. Si le costó tiempo o una pista, vuelve antes. Si el primer intento fue malo, o pidió ver la jugada, vuelve en la misma sesión y otra vez mañana.',
      'Una buena jugada que el curso solo menciona no es un error: se le pregunta de nuevo. «Sabidas» son las que se preguntarán dentro de una semana o más tarde. El día empieza a las cuatro de la mañana.',
      'Haga las jugadas en el tablero arrastrando o tocando dos casillas, recorra las casillas con las flechas y elija con Intro, o escríbalas.',
    ],

    session: 'La línea',
    left: { one: 'Queda una jugada', other: 'Quedan {n} jugadas' },
    stop: 'Parar aquí',
    yourMove: 'Le toca jugar.',
    played: '{side} juegan {move}.',
    newMove: 'Nueva para usted: el curso juega {move}. Hágala en el tablero.',
    changedMove: 'Consejo nuevo: aquí el curso juega ahora {move}. Hágala en el tablero.',
    notShown: 'Aquí el curso juega {move}. Juegue esa.',
    shown: 'Bien. Dentro de un rato se le preguntará.',
    right: '{move} es correcta.',
    option: '{move} también es buena, y el curso la menciona. Recomienda otra: ¿cuál?',
    bad: '{move} es un error. Inténtelo de nuevo.',
    other: '{move} se puede jugar, pero aquí el curso hace otra cosa. Inténtelo de nuevo.',
    hint: 'Pista',
    hinted: 'Se mueve esta pieza: {piece} en {square}.',
    show: 'Ver la jugada',
    given: 'El curso juega {move}. Vuelve antes del final.',
    on: 'Seguir',
    nextLine: 'Otra línea',
    finish: 'Al final',
    blank: 'su jugada',

    ended: 'Eso es todo por ahora',
    endedEarly: 'Ha parado',
    answered: { one: 'Respondió una jugada.', other: 'Respondió {n} jugadas.' },
    answeredNone: 'No respondió ninguna jugada.',
    atOnce: { one: 'Una la supo al momento.', other: '{n} las supo al momento.' },
    slowly: {
      one: 'Una le costó tiempo o una pista.',
      other: '{n} le costaron tiempo o una pista.',
    },
    missed: {
      one: 'Una no la supo. Vuelve mañana:',
      other: '{n} no las supo. Vuelven mañana:',
    },
    seen: {
      one: 'Una jugada nueva se le enseñó y aún no se le ha preguntado.',
      other: '{n} jugadas nuevas se le enseñaron y aún no se le han preguntado.',
    },
    toOverview: 'Volver al resumen',
  },
};
