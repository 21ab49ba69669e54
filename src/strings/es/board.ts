import type { board as english } from '../en/board.ts';

/** The words of the boards; they travel to the browser as data. */
export const board: typeof english = {
  board: {
    label: 'Tablero',
    start: 'al comienzo',
    after: 'tras',
    or: 'o',
    next: 'sigue',
    also: 'también se llega:',
    /** Before the moves from here, the main one first. */
    plays: { white: 'Juegan las blancas:', black: 'Juegan las negras:' },
    back: 'Atrás',
    on: 'Adelante',
    turn: 'Girar el tablero',
    fold: 'Plegar el tablero',
    unfold: 'Mostrar el tablero',
    own: 'Jugar y anotar',
    ownFailed: 'El juego libre no se pudo cargar. Inténtelo de nuevo con conexión.',
    to: 'a',
    takes: 'captura en',
    castlesShort: 'enroque corto',
    castlesLong: 'enroque largo',
    promotes: 'se convierte en',
    check: 'jaque',
    mate: 'mate',
    squares: 'Tablero: elija una pieza y luego su casilla; las flechas recorren las casillas',
    typed: 'Su jugada',
    play: 'Jugar',
    promote: 'El peón se convierte en',
    illegal: '{move} no es una jugada legal aquí.',
    cannotGo: 'La pieza de {from} ({piece}) no puede ir a {to}.',
    notYours: { white: 'Juegan las blancas.', black: 'Juegan las negras.' },
    unclear: '«{text}» podría ser {moves}.',
    unreadable: '«{text}» no es una jugada; se escribe como {example}.',
  },

  /** Where a position is set up by hand. */
  setUp: {
    squares:
      'Tablero: elija abajo una pieza y luego sus casillas; las flechas recorren las casillas, Supr quita una pieza',
    tray: 'Piezas para colocar en el tablero',
    takeOff: 'Quitar una pieza',
    empty: 'vacía',
  },
};
