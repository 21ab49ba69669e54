import type { book as english } from '../en/book.ts';

export const book: typeof english = {
  boardAfter: (move) => `Tras ${move}`,
  cover: 'Cubierta',
  titlePage: 'Portada',
  landmarks: 'Puntos de referencia',
  text: 'Texto',
  toAnswer: 'A la solución',
  courseOnline: 'El curso en la red:',
  accessibility:
    'Cada tablero está descrito con palabras y todas las jugadas están en el texto. El libro no necesita colores, sonido ni scripts.',
};
