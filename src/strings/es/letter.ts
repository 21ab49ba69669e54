import type { letter as english } from '../en/letter.ts';

export const letter: typeof english = {
  unsubscribe: 'Darse de baja de esta lista',
  fromCourse: 'Del curso {course}.',
  fromCourseBy: 'Del curso {course} de {author}.',
  withBoard: 'Con un tablero para reproducir las jugadas:',
  positionsTitle: 'Posiciones del curso',
  coursePlays: (move) => `Aquí el curso juega ${move}.`,
  courseAnswers: (moves) => `El curso tiene una respuesta a ${moves}.`,

  textBoards: (pieces) =>
    `En los tableros las mayúsculas son las piezas blancas y las minúsculas las negras: ${pieces}. Un punto es una casilla vacía.`,
  pawnLetter: 'P',
  marked: 'Marcadas',
  arrows: { plan: 'Plan', threat: 'Amenaza', guard: 'Defensa' },
};
