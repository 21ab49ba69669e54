import type { practice as english } from '../en/practice.ts';

export const practice: typeof english = {
  practicePage: 'Práctica',
  practiceLead:
    'Encuentre de memoria las jugadas del curso. Lo que sabe se pregunta cada vez menos; lo que falla vuelve mañana.',
  practiceNeedsScript:
    'Para practicar hace falta JavaScript, que está desactivado en este navegador.',

  practice: {
    title: 'Practicar',
    untouched: {
      one: 'El curso tiene una jugada que encontrar. Se le muestra una vez, con lo que dice el autor; después se le pregunta.',
      other:
        'El curso tiene {n} jugadas que encontrar. Cada una se le muestra una vez, con lo que dice el autor; después se le pregunta.',
    },
    due: { one: 'Hoy vuelve una jugada.', other: 'Hoy vuelven {n} jugadas.' },
    nothingDue: 'Hoy no vuelve nada.',
    changed: {
      one: 'En una de ellas el curso aconseja ahora otra cosa.',
      other: 'En {n} de ellas el curso aconseja ahora otra cosa.',
    },
    unmet: { one: 'Le queda una jugada por conocer.', other: 'Le quedan {n} jugadas por conocer.' },
    allMet: 'Ya conoce todas las jugadas.',
    nothingHere: 'Aquí el curso no pregunta nada.',
    begin: { one: 'Empezar, con una jugada', other: 'Empezar, con {n} jugadas' },
    beginBack: { one: 'Solo la que vuelve', other: 'Solo las {n} que vuelven' },
    beginAhead: { one: 'Jugarla otra vez', other: 'Jugar {n} de ellas otra vez' },
    noneChosen: 'Ningún capítulo está marcado. Marque los que quiera practicar.',
    about: 'Práctica: {title}',
    wholeCourse: 'Practicar todo el curso',
    missedInGames: 'lo que faltó en sus partidas',

    overview: 'Capítulo por capítulo',
    overviewHelp:
      'No se preguntan jugadas de capítulos sin marcar. El nombre de un capítulo empieza una sesión de ese capítulo solo.',
    include: 'Preguntar jugadas de «{title}»',
    standing: { one: '{known} de una jugada sabida', other: '{known} de {n} jugadas sabidas' },
    onTheWay: { one: 'otra ya vista', other: 'otras {n} ya vistas' },
    seeToday: { one: 'una para hoy', other: '{n} para hoy' },
    lately: '{n} de {answers} falladas en cuatro semanas',
    before: '{n} de {answers} en las cuatro anteriores',
    whole: 'Todo el curso',
    wholeHelp: 'Una jugada que está en varios capítulos cuenta una vez.',

    forecast: 'Qué vuelve, y cuándo',
    tomorrow: 'Mañana',
    inSecondWeek: 'La semana siguiente',
    inFourWeeks: 'En dos a cuatro semanas',
    later: 'Más tarde',
    moves: { one: 'una jugada', other: '{n} jugadas' },

    weeks: 'Sus últimas semanas',
    thisWeek: 'Estos siete días',
    weekBefore: 'Los siete anteriores',
    weeksAgo: 'Hace {n} semanas',
    score: '{n} de {answers} falladas',
    scoreNone: 'ningún fallo en {answers}',
    noAnswers: 'sin práctica',
    often: 'Lo más fallado',
    oftenMissed: 'Fallada {n} veces en {answers} respuestas, preguntada por última vez el {day}.',

    adopted: {
      one: 'Una de estas jugadas ya la ha practicado, en este curso con otro nombre o en otro curso de este sitio. No se pregunta como nueva.',
      other:
        '{n} de estas jugadas ya las ha practicado, en este curso con otro nombre o en otro curso de este sitio. No se preguntan como nuevas.',
    },
    resting: {
      one: 'Una jugada que aprendió no se pregunta en esta edición del curso. Descansa, y vuelve si el curso la pregunta de nuevo.',
      other:
        '{n} jugadas que aprendió no se preguntan en esta edición del curso. Descansan, y vuelven si el curso las pregunta de nuevo.',
    },

    keeping: 'Su progreso',
    keepingHelp:
      'Se guarda en este navegador y no se envía a ninguna parte. Para llevarlo a otro navegador, guárdelo en un archivo y lea allí el archivo.',
    save: 'Guardar en un archivo',
    load: 'Leer de un archivo',
    forget: 'Olvidarlo todo',
    forgetHelp:
      'Todo lo que ha aprendido en este curso se olvida en este navegador, y usted empieza de nuevo. No se puede deshacer. Sus notas, sus marcadores y lo que ha leído se conservan; también un archivo que haya guardado, que se puede volver a leer.',
    forgetNow: 'Olvidarlo ahora',
    forgotten: 'Olvidado. Empieza de nuevo.',
    notForgotten: 'El navegador no deja que la página cambie lo guardado. No se ha olvidado nada.',
    taken: {
      one: 'Leído: se tomó una jugada del archivo.',
      other: 'Leído: se tomaron {n} jugadas del archivo.',
    },
    takenExercises: {
      one: 'Se ha añadido {n} resultado de ejercicios.',
      other: 'Se han añadido {n} resultados de ejercicios.',
    },
    takenNotes: {
      one: 'También se tomó una nota.',
      other: 'También se tomaron {n} notas.',
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
      'Usted juega con un bando y la página con el otro, con las jugadas que el curso trata. Las jugadas que hoy no se preguntan se juegan por usted en el camino.',
      'No hay notas. Una jugada que encuentra enseguida se pregunta de nuevo tras unos días, luego semanas, luego meses. Si tardó mucho o necesitó una pista, vuelve antes. Si el primer intento fue malo o pidió verla, vuelve una vez en la misma sesión y de nuevo mañana.',
      'Una sesión tiene doce jugadas como mucho: lo que vuelve hoy y hasta ocho que aún no conoce, primero aquellas de las que depende más curso.',
      'Una buena jugada que el curso solo menciona no es un fallo: se le pregunta otra vez. Sabido es lo que se preguntará dentro de una semana o más. El día empieza a las cuatro de la mañana.',
      'Juegue en el tablero arrastrando o con dos toques, recorra las casillas con las flechas y elija con Intro, o escriba la jugada.',
    ],

    session: 'Esta sesión',
    count: 'Jugada {n} de {all}.',
    countAgain: 'Jugada {n} de {all}, otra vez.',
    comeBack: { one: 'Una vuelve.', other: '{n} vuelven.' },
    marks: {
      here: '{n}: se pregunta ahora',
      right: '{n}: bien',
      wrong: '{n}: fallada',
      due: '{n}: vuelve',
      rest: '{n}: por venir',
    },
    stop: 'Parar aquí',
    sides: { white: 'las blancas', black: 'las negras' },
    question: '¿Qué juegan {side}?',
    played: 'Juegan {side}: {move}.',
    newMove: 'Aquí {side} juegan {move}.',
    newMoveHelp: 'Aún no la conoce. Haga la jugada en el tablero.',
    changedMove: 'Ahora {side} juegan {move}.',
    changedMoveHelp: 'El curso aconseja aquí algo nuevo. Haga la jugada en el tablero.',
    notShown: 'Aquí el curso juega {move}. Juegue eso.',
    shown: 'Bien. Se le preguntará dentro de un rato.',
    right: 'Bien: {move}',
    wasRight: '{move} es correcto.',
    tryAgain: 'Esa no. Otra vez.',
    alsoGood: 'También es buena. ¿Cuál aconseja el curso?',
    option: '{move} es buena jugada, y el curso la menciona.',
    bad: '{move} es un error, dice el curso.',
    other: '{move} se puede jugar, pero no es la jugada del curso.',
    entry: 'Mueva una pieza en el tablero, o escriba la jugada',
    entryExample: 'por ejemplo {move}',
    hint: 'Una pista',
    hinted: 'Es una jugada de la pieza en {square}: {piece}.',
    show: 'Mostrar',
    given: 'El curso juega {move}',
    givenHelp: 'Vuelve antes del final.',
    on: 'Seguir',
    nextLine: 'Otra línea',
    finish: 'Ver cómo fue',

    fromMemory: {
      one: 'Esta vez, no de memoria.',
      other: '{right} de {n} de memoria.',
    },
    allFromMemory: { one: 'Encontrada de memoria.', other: 'Las {n} de memoria.' },
    answeredNone: 'Ha parado antes de la primera respuesta.',
    lookAgain: { one: 'Una para ver otra vez', other: '{n} para ver otra vez' },
    youPlayed: 'Usted jugó {move}.',
    youWereShown: 'Pidió verla.',
    tomorrowAgain: 'Vuelve mañana.',
    readThere: 'Leer el pasaje',
    seen: {
      one: 'Una jugada nueva se mostró y aún no se ha preguntado.',
      other: '{n} jugadas nuevas se mostraron y aún no se han preguntado.',
    },
    again: { one: 'Otra vez, esta', other: 'Otra vez, estas {n}' },
    more: { one: 'Seguir, con una más', other: 'Seguir, con {n} más' },
    toExercises: { one: 'Un ejercicio sobre esto', other: '{n} ejercicios sobre esto' },
    exercise: 'Un ejercicio',
    nextExercise: 'Otro ejercicio',
    back: 'Volver al resumen',
  },
};
