import type { page as english } from '../en/page.ts';

/** Spanish. Piece letters and terms as Spanish chess books print them (common practice, no source). */
export const page: typeof english = {
  pieceLetters: { king: 'R', queen: 'D', rook: 'T', bishop: 'A', knight: 'C', pawn: '' },
  pieceNames: {
    king: 'rey',
    queen: 'dama',
    rook: 'torre',
    bishop: 'alfil',
    knight: 'caballo',
    pawn: 'peón',
  },
  white: 'Blancas',
  black: 'Negras',

  contents: 'Índice',
  chapterNumber: (n) => `Capítulo ${n}`,
  draft: 'Borrador',
  positionsLead: 'Las posiciones que conviene conocer, capítulo a capítulo.',
  noPositions: 'Ninguna posición de este curso tiene nombre.',
  by: (author) => `por ${author}`,
  sideTaught: {
    white: 'Un curso para las blancas',
    black: 'Un curso para las negras',
    both: 'Un curso para los dos bandos',
  },
  licence: (licence) => `Licencia: ${licence}`,
  skipToText: 'Ir al texto',
  skipToSections: 'Ir a las secciones',
  skipToExercises: 'Ir a los ejercicios',
  sections: 'Secciones',
  sectionsOfChapter: 'Secciones de este capítulo',
  sectionsOfPage: 'Secciones de esta página',
  practiseChapter: 'Practicar este capítulo',
  nextChapter: 'Capítulo siguiente',
  previousChapter: 'Capítulo anterior',
  pages: 'Páginas del curso',
  allPages: 'Todas las páginas',
  /** Names the list of the author's own pages in the foot. */
  ownPages: 'Sobre este curso',
  languages: 'Idiomas',
  /** Above a chapter or a page that stands in the words of another language. */
  notTranslated: 'Esta página aún no está traducida: aparece con las palabras del original.',
  cardAlt: (title) => `Un tablero y el título: ${title}`,

  takeAlong: 'Para llevar',
  download: {
    book: 'El curso como libro electrónico (EPUB)',
    moves: 'Las jugadas para programas de ajedrez (PGN)',
  },

  notFound: 'Esta página no existe',
  notFoundLead: 'Puede que la dirección esté mal escrita o que el capítulo tenga otro nombre.',
  toContents: 'Al índice',

  gone: {
    position:
      'La posición de este enlace ya no está en este capítulo. El tablero muestra la más parecida: {nearest}.',
    place: 'El lugar al que lleva este enlace ya no está en este capítulo.',
    elsewhere: 'Ahora está en «{chapter}».',
    close: 'Cerrar',
  },

  startPosition: 'al comienzo',
  after: (move) => `tras ${move}`,
  inChapter: (position, chapter) => `${position} en «${chapter}»`,
  titled: (title, words) => `«${title}», ${words}`,
  sameAs: () => 'la misma posición que',
  comesLater: 'más sobre esto después,',
  alternative: (reason) => (reason === '' ? '(una alternativa)' : `(una alternativa: ${reason})`),
  lineEnds: (reason) => `– ${reason}`,
  startsFrom: 'Desde la posición',
  toMove: { white: 'Juegan las blancas', black: 'Juegan las negras' },
  picture: 'Imagen',
  pictureTwice: 'Imagen grande',
  pictureOf: (caption) => `Imagen del diagrama: ${caption}`,
  and: 'y',

  someone: 'N.N.',
  round: (round) => `ronda ${round}`,
  gameGoesOn: (move) => `Se omiten las jugadas hasta la ${move}.`,
  gameLeaves: {
    sides: { white: 'Las blancas', black: 'Las negras' },
    advised:
      '{side} se apartan del curso {after}: el curso aconseja {advice}; aquí se jugó {played}.',
    covered:
      '{side} se apartan del curso {after}: el curso responde a {moves}; aquí se jugó {played}.',
    known: '{side} se apartan del curso {after}: el curso trae {moves}; aquí se jugó {played}.',
    ended: 'El curso termina {after}; la partida siguió con {played}.',
    within: 'Esta partida no se aparta nunca del curso: termina {after}.',
    never: 'Esta partida no entra nunca en el curso.',
  },

  exerciseNumber: (number) => `Ejercicio ${number}`,
  answers: 'Soluciones',
  /** The move of the other side before the question. */
  justPlayed: {
    white: (move: string) => `Las blancas acaban de jugar ${move}.`,
    black: (move: string) => `Las negras acaban de jugar ${move}.`,
  },
  hint: (number: number, of: number) => (of === 1 ? 'Pista' : `Pista ${number} de ${of}`),
  answer: 'Solución',
  alsoGood: 'También es buena, pero no es la solución:',
  notTheAnswer: 'No es la solución:',

  exercise: {
    giveUp: 'Mostrar la solución',
    again: 'Empezar de nuevo',
    look: 'Buscar la solución',
    right: 'Correcto.',
    reply: 'Correcto. Sigue {move}. Busque la jugada siguiente ({n} de {count}).',
    whole: 'Correcto. Esa es toda la solución.',
    also: 'También es buena, pero no es la solución.',
    alsoReply: 'También es buena, pero no es la solución. Sigue {move}. Continúe.',
    wrong: 'No es la solución.',
    legal: '{move} se puede jugar, pero no es la solución.',
    given: 'La solución:',
    back: 'Jugada anterior',
    on: 'Jugada siguiente',
    next: 'Ejercicio siguiente',
    all: 'Todos los ejercicios',
  },

  patternEmpty: (squares) => `Vacías: ${squares}.`,
  patternLegend:
    'Las casillas entre corchetes están vacías; puede haber otras piezas en cualquier lugar.',
  patternCount: { one: 'En una posición del curso', other: 'En {n} posiciones del curso' },
  patternHere: 'En este capítulo:',
  patternThere: (chapter) => `En «${chapter}»:`,
  patternRun: (first, last) => `de ${first} a ${last}`,
  patternMore: (count) => `${count} más`,
  patternAdvice: 'Se recomienda:',
  patternOr: 'o',
  patternClaims: 'Cierto en cada una de estas posiciones:',
  patternExcept: 'Salvo',
  patternReversed: 'Con los colores invertidos',

  footnotes: 'Notas',
  footnoteBack: 'Volver al texto',
  showOnBoard: 'Mostrar en el tablero',
};
