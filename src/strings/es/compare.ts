import type { compare as english } from '../en/compare.ts';

/** Spanish. */
export const compare: typeof english = {
  title: 'Comparar sus partidas',
  lead: 'Después de jugar: vea dónde se apartaron sus partidas de este curso y qué aconseja allí. Basta una partida; pueden ser miles. No salen de este dispositivo; no se envía nada.',
  needsScript: 'Para comparar hace falta JavaScript, que está desactivado en este navegador.',
  choose: 'Elegir archivos PGN',
  drop: 'o soltarlos aquí',
  paste: 'O pegar partidas',
  go: 'Comparar',
  stop: 'Detener',
  progress: 'Comparando',
  read: { one: '{n} partida leída', other: '{n} partidas leídas' },
  stopped: {
    one: 'Detenido tras {n} partida; esto es lo que muestra.',
    other: 'Detenido tras {n} partidas; esto es lo que muestran.',
  },
  done: { one: 'Se comparó {n} partida.', other: 'Se compararon {n} partidas.' },
  noGames:
    'No se encontró ninguna partida. Un PGN tiene etiquetas como [White "…"] y jugadas como 1. e4 e5 (letras inglesas).',
  failed: 'No se pudieron leer todas las partidas: {reason}',

  result: 'Lo que muestran las partidas',
  figures: {
    games: 'Partidas',
    met: 'Dentro del curso',
    within: 'Terminaron en él',
    apart: 'Nunca en el curso',
    otherSide: 'Con el otro bando',
    empty: 'Sin jugadas',
    variant: 'De otras variantes',
    broken: 'Imposibles de seguir',
  },
  lastKnown:
    'Una partida se aparta del curso en la última posición que el curso conoce, por cualquier orden de jugadas que llegara a ella.',
  player: 'Solo partidas de',
  playerHint:
    'Escriba un nombre o una parte: solo cuentan las partidas en que esa persona llevó el bando del curso ({side}).',
  playerHintBoth: 'Escriba un nombre o una parte.',
  playerFound:
    '{name} figura en {n} de las {count} partidas: solo cuentan esas. Cambie el nombre, o vacíe el campo para todas las partidas.',
  practise: 'Practicar lo que faltó en sus partidas',
  practiseCount: { one: '{n} posición', other: '{n} posiciones' },
  nobody: 'Ninguna partida tiene un jugador con ese nombre.',

  advisedYou: 'Dónde se apartó usted del curso',
  advised: '{side}: dónde se apartaron del curso',
  advisedHint: 'Las posiciones que conviene repasar, primero las más frecuentes.',
  asideYou: 'Dónde jugó usted lo que el curso solo menciona',
  aside: '{side}: dónde jugaron lo que el curso solo menciona',
  asideHint: 'El curso conoce la jugada, como alternativa o como mala, y aconseja otra.',
  asideMove: {
    option: 'Antes, {after}, se jugó {played}: el curso la menciona y aconseja {advice}.',
    bad: 'Antes, {after}, se jugó {played}: el curso la llama mala y aconseja {advice}.',
  },
  covered: 'Respuestas que el curso no trata',
  coveredHint: '{side}: jugaron aquí algo distinto de lo que espera el curso.',
  known: 'Dónde se apartan las partidas del curso',
  knownHint: 'El curso trae jugadas aquí, y se hicieron otras.',
  ended: 'Dónde termina el curso',
  endedHint: 'Hasta aquí lo siguieron las partidas; luego continuaron.',
  noLeaving: 'Ninguna partida se apartó del curso.',

  position: 'Posición',
  count: 'Partidas',
  advice: 'El curso',
  played: 'Se jugó',
  score: 'Resultado ({side})',
  scoreInWords: '{won} ganadas, {drawn} tablas, {lost} perdidas',
  showGames: { one: '{n} partida', other: '{n} partidas' },
  moreMoves: { one: 'y {n} jugada más', other: 'y {n} jugadas más' },
  morePositions: { one: 'Mostrar {n} posición más', other: 'Mostrar {n} posiciones más' },

  list: 'Partida por partida',
  listHere: 'Las partidas contadas aquí: {position}',
  allGames: 'Mostrar todas las partidas',
  moreGames: { one: 'Mostrar {n} partida más', other: 'Mostrar {n} partidas más' },

  broken: {
    one: '{n} partida no se puede seguir y no cuenta',
    other: '{n} partidas no se pueden seguir y no cuentan',
  },
  game: 'Partida {n}',
  faults: {
    illegal: '{move} no es una jugada legal.',
    ambiguous: '{move} podría ser más de una jugada.',
    unreadable: '«{text}» en la jugada {at} no es una jugada.',
    'comment-unclosed': 'Un comentario queda sin cerrar: {text}',
    'variation-unclosed': 'Una variante queda sin cerrar: {text}',
    start: 'Su comienzo no es una posición: {text}',
    'too-long': 'Es más larga de lo que puede ser una partida.',
  },
  variant: 'Otra variante de ajedrez: {text}',
  empty: 'No tiene jugadas.',
};
