import type { page as english } from '../en/page.ts';

/** German. Piece letters and terms as German chess books print them (common practice, no source). */
export const page: typeof english = {
  pieceLetters: { king: 'K', queen: 'D', rook: 'T', bishop: 'L', knight: 'S', pawn: '' },
  pieceNames: {
    king: 'König',
    queen: 'Dame',
    rook: 'Turm',
    bishop: 'Läufer',
    knight: 'Springer',
    pawn: 'Bauer',
  },
  white: 'Weiß',
  black: 'Schwarz',

  contents: 'Inhalt',
  chapterNumber: (n) => `Kapitel ${n}`,
  draft: 'Entwurf',
  positionsLead: 'Die Stellungen, die man kennen sollte, Kapitel für Kapitel.',
  noPositions: 'Keine Stellung dieses Kurses hat einen Namen.',
  by: (author) => `von ${author}`,
  sideTaught: {
    white: 'Ein Kurs für Weiß',
    black: 'Ein Kurs für Schwarz',
    both: 'Ein Kurs für beide Seiten',
  },
  licence: (licence) => `Lizenz: ${licence}`,
  skipToText: 'Zum Text springen',
  skipToSections: 'Zu den Abschnitten springen',
  skipToExercises: 'Zu den Aufgaben springen',
  sections: 'Abschnitte',
  sectionsOfChapter: 'Abschnitte dieses Kapitels',
  sectionsOfPage: 'Abschnitte dieser Seite',
  practiseChapter: 'Dieses Kapitel üben',
  nextChapter: 'Nächstes Kapitel',
  previousChapter: 'Voriges Kapitel',
  pages: 'Seiten des Kurses',
  allPages: 'Alle Seiten',
  /** Names the list of the author's own pages in the foot. */
  ownPages: 'Über diesen Kurs',
  languages: 'Sprachen',
  /** Above a chapter or a page that stands in the words of another language. */
  notTranslated:
    'Diese Seite ist noch nicht übersetzt: Sie steht hier in den Worten des Originals.',
  cardAlt: (title) => `Ein Brett und der Titel: ${title}`,

  takeAlong: 'Zum Mitnehmen',
  download: { book: 'Der Kurs als E-Book (EPUB)', moves: 'Die Züge für Schachprogramme (PGN)' },

  notFound: 'Diese Seite gibt es nicht',
  notFoundLead: 'Die Adresse ist vielleicht vertippt, oder das Kapitel hat einen neuen Namen.',
  toContents: 'Zum Inhalt',

  gone: {
    position:
      'Die Stellung dieses Verweises steht nicht mehr in diesem Kapitel. Das Brett zeigt die ähnlichste: {nearest}.',
    place: 'Die Stelle, zu der dieser Verweis führt, gibt es in diesem Kapitel nicht mehr.',
    elsewhere: 'Sie steht jetzt in „{chapter}“.',
    close: 'Schließen',
  },

  startPosition: 'am Anfang',
  after: (move) => `nach ${move}`,
  inChapter: (position, chapter) => `${position} in „${chapter}“`,
  titled: (title, words) => `„${title}“, ${words}`,
  // Nach diesen Wörtern steht der Dativ.
  sameAs: (word) =>
    /^(?:aus|bei|mit|seit|von|zu)$/.test(word) ? 'derselben Stellung wie' : 'dieselbe Stellung wie',
  comesLater: 'dazu später mehr,',
  alternative: (reason) => (reason === '' ? '(eine Alternative)' : `(eine Alternative: ${reason})`),
  lineEnds: (reason) => `– ${reason}`,
  startsFrom: 'Aus der Stellung',
  toMove: { white: 'Weiß am Zug', black: 'Schwarz am Zug' },
  picture: 'Bild',
  pictureTwice: 'Großes Bild',
  pictureOf: (caption) => `Bild des Diagramms: ${caption}`,
  and: 'und',

  someone: 'N.N.',
  round: (round) => `Runde ${round}`,
  gameGoesOn: (move) => `Die Züge bis ${move} sind ausgelassen.`,
  gameLeaves: {
    sides: { white: 'Weiß', black: 'Schwarz' },
    advised:
      '{side} verlässt den Kurs {after}: Der Kurs empfiehlt {advice}; hier wurde {played} gespielt.',
    covered:
      '{side} verlässt den Kurs {after}: Der Kurs beantwortet {moves}; hier wurde {played} gespielt.',
    known:
      '{side} verlässt den Kurs {after}: Der Kurs kennt {moves}; hier wurde {played} gespielt.',
    ended: 'Der Kurs endet {after}; die Partie ging weiter mit {played}.',
    within: 'Diese Partie verlässt den Kurs nie: Sie endet {after}.',
    never: 'Diese Partie berührt den Kurs nie.',
  },

  exerciseNumber: (number) => `Aufgabe ${number}`,
  answers: 'Lösungen',
  /** The move of the other side before the question. */
  justPlayed: {
    white: (move: string) => `Weiß hat eben ${move} gezogen.`,
    black: (move: string) => `Schwarz hat eben ${move} gezogen.`,
  },
  hint: (number: number, of: number) => (of === 1 ? 'Hinweis' : `Hinweis ${number} von ${of}`),
  answer: 'Lösung',
  alsoGood: 'Auch gut, aber nicht die Lösung:',
  notTheAnswer: 'Nicht die Lösung:',

  exercise: {
    giveUp: 'Lösung zeigen',
    again: 'Von vorn',
    look: 'Die Lösung suchen',
    right: 'Richtig.',
    reply: 'Richtig. Es folgt {move}. Finden Sie den nächsten Zug ({n} von {count}).',
    whole: 'Richtig. Das ist die ganze Lösung.',
    also: 'Auch gut, aber nicht die Lösung.',
    alsoReply: 'Auch gut, aber nicht die Lösung. Es folgt {move}. Weiter.',
    wrong: 'Nicht die Lösung.',
    legal: '{move} ist spielbar, aber nicht die Lösung.',
    given: 'Die Lösung:',
    back: 'Voriger Zug',
    on: 'Nächster Zug',
    next: 'Nächste Aufgabe',
    all: 'Alle Aufgaben',
  },

  patternEmpty: (squares) => `Leer: ${squares}.`,
  patternLegend: 'Eingeklammerte Felder sind leer; weitere Figuren dürfen überall stehen.',
  patternCount: { one: 'In einer Stellung des Kurses', other: 'In {n} Stellungen des Kurses' },
  patternHere: 'In diesem Kapitel:',
  patternThere: (chapter) => `In „${chapter}“:`,
  patternRun: (first, last) => `von ${first} bis ${last}`,
  patternMore: (count) => `${count} weitere`,
  patternAdvice: 'Empfohlen:',
  patternOr: 'oder',
  patternClaims: 'Gilt in jeder dieser Stellungen:',
  patternExcept: 'Außer',
  patternReversed: 'Mit vertauschten Farben',

  footnotes: 'Anmerkungen',
  footnoteBack: 'Zurück zum Text',
  showOnBoard: 'Auf dem Brett zeigen',
};
