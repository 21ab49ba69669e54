import type { changes as english } from '../en/changes.ts';

export const changes: typeof english = {
  changes: {
    page: 'Novedades',
    lead: 'Lo que ha cambiado en este curso, lo último primero.',
    feed: (course) => `${course}: novedades`,
    subscribe: 'Las novedades como canal',
    titleOf: (date) => `Novedades del ${date}`,
    nothing: 'Nada ha cambiado en el tablero.',
    side: {
      white: 'El curso es ahora para las blancas.',
      black: 'El curso es ahora para las negras.',
      both: 'El curso es ahora para ambos bandos.',
    },
    newChapter: {
      one: 'Un capítulo nuevo con una posición nueva.',
      other: 'Un capítulo nuevo con {n} posiciones nuevas.',
    },
    droppedChapter: {
      one: 'Este capítulo se ha retirado, y con él una posición.',
      other: 'Este capítulo se ha retirado, y con él {n} posiciones.',
    },
    kinds: {
      advice: 'Otras recomendaciones',
      reply: 'Nuevas respuestas tratadas',
      extended: 'Variantes que continúan',
      start: 'Variantes nuevas',
      option: 'Nuevas alternativas',
      judged: 'Jugadas con nuevo juicio',
      assessment: 'Otras valoraciones',
      dropped: 'Retirado',
      exercise: 'Ejercicios',
      pattern: 'Estructuras',
    },
    advice: '{at}: {now}, ya no {before}.',
    adviceGiven: '{at}: el curso recomienda ahora {now}.',
    adviceWithdrawn: '{at}: {before} ya no se recomienda.',
    mistake: (move, reason) =>
      reason === undefined ? `${move} era un error.` : `${move} era un error: ${reason}`,
    why: (reason) => `Por qué: ${reason}`,
    replyAnswered: '{at}: {move}, y la respuesta es {answer}.',
    moveAdded: '{at}: {move}.',
    ownStart: 'desde una posición propia',
    moveDropped: '{at}: {move}.',
    calledBad: '{at}: {move} se considera ahora una mala jugada.',
    calledBadNoMore: '{at}: {move} ya no se considera una mala jugada.',
    assessment: '{at}: {now}, ya no {before}.',
    positions: { one: '{n} posición nueva', other: '{n} posiciones nuevas' },
    positionsDropped: { one: '{n} posición', other: '{n} posiciones' },
    exercise: {
      new: '{exercise} es nuevo.',
      changed: '{exercise} tiene otra solución o juzga otras jugadas.',
      dropped: '{exercise} se ha retirado.',
    },
    pattern: {
      new: '{pattern} es nueva.',
      changed: '{pattern} tiene otras piezas.',
      said: 'Ha cambiado lo que el curso dice de {pattern}.',
      dropped: '{pattern} se ha retirado.',
    },
  },
};
