import type { board as english } from '../en/board.ts';

/** The words of the boards; they travel to the browser as data. */
export const board: typeof english = {
  board: {
    label: 'Brett',
    start: 'am Anfang',
    after: 'nach',
    or: 'oder',
    next: 'weiter mit',
    also: 'auch erreicht:',
    /** Before the moves from here, the main one first. */
    plays: { white: 'Weiß spielt', black: 'Schwarz spielt' },
    back: 'Zurück',
    on: 'Weiter',
    turn: 'Brett drehen',
    fold: 'Brett einklappen',
    unfold: 'Brett zeigen',
    own: 'Spielen und notieren',
    ownFailed:
      'Das freie Spiel konnte nicht geladen werden. Versuchen Sie es mit Verbindung noch einmal.',
    to: 'nach',
    takes: 'schlägt auf',
    castlesShort: 'kurze Rochade',
    castlesLong: 'lange Rochade',
    promotes: 'wird',
    check: 'Schach',
    mate: 'matt',
    squares: 'Brett: eine Figur wählen, dann ihr Feld; die Pfeiltasten gehen über die Felder',
    typed: 'Ihr Zug',
    play: 'Ziehen',
    promote: 'Der Bauer wird',
    illegal: '{move} ist hier kein regelgemäßer Zug.',
    cannotGo: '{piece} {from} kann nicht nach {to} ziehen.',
    notYours: { white: 'Weiß ist am Zug.', black: 'Schwarz ist am Zug.' },
    unclear: '„{text}“ könnte {moves} sein.',
    unreadable: '„{text}“ ist kein Zug; geschrieben wird er wie {example}.',
  },

  /** Where a position is set up by hand. */
  setUp: {
    squares:
      'Brett: unten eine Figur wählen, dann ihre Felder; mit den Pfeiltasten geht man über die Felder, Entf nimmt eine Figur weg',
    tray: 'Figuren zum Aufstellen',
    takeOff: 'Figur wegnehmen',
    empty: 'leer',
  },
};
