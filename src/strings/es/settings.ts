import type { settings as english } from '../en/settings.ts';

export const settings: typeof english = {
  title: 'Ajustes',
  lead: 'Valen en este navegador para todos los cursos de esta dirección.',
  close: 'Cerrar',
  theme: { title: 'Claro u oscuro', own: 'Como el sistema', light: 'Claro', dark: 'Oscuro' },
  notation: {
    title: 'Jugadas',
    letters: 'Letras españolas: {move}',
    english: 'Letras inglesas: {move}',
    figurines: 'Figuras: {move}',
  },
  size: { title: 'Tableros', small: 'Pequeños', own: 'Medianos', large: 'Grandes' },
  motion: {
    title: 'Una jugada en el tablero',
    own: 'La pieza se desliza',
    off: 'La pieza salta',
  },
  sound: { title: 'Sonido de las jugadas', own: 'No', on: 'Sí' },
};
