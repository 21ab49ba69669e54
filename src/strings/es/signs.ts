import type { signs as english } from '../en/signs.ts';

export const signs: typeof english = {
  page: 'Signos y teclas',
  lead: 'Qué significan los signos de los tableros y de las jugadas, qué teclas hay y cómo leer sin red.',

  boards: 'En el tablero',
  board: {
    turn: 'El triángulo del borde dice a quién le toca: está en el lado del que juega, y es blanco o negro como él.',
    lastMove: 'La última jugada: de dónde vino la pieza y dónde está ahora.',
    mark: 'Corchetes alrededor de una casilla: el texto habla de ella.',
    empty:
      'En un patrón, los corchetes rodean casillas vacías; las demás piezas pueden estar donde sea.',
    plan: 'Un plan: adónde quiere ir una pieza.',
    threat: 'Una amenaza: lo que ataca una pieza.',
    guard: 'Una defensa: lo que protege una pieza.',
  },

  moves: 'En las jugadas',
  letters:
    'Cada pieza tiene su letra; el peón no tiene. En los ajustes se pueden elegir figuras o las letras inglesas.',
  piece: 'Pieza',
  letter: 'Letra',
  english: 'Inglés',
  figurine: 'Figura',
  castles:
    '{short} es el enroque corto, {long} el largo; x captura, + es jaque, # es mate, = es la pieza en que se convierte un peón.',
  glyphs: 'Tras una jugada',
  sign: 'Signo',
  meaning: 'Significado',

  states: 'Cómo va',
  state: {
    here: 'usted está aquí',
    right: 'sabido o bien resuelto',
    wrong: 'fallado',
    due: 'toca practicarlo otra vez',
    rest: 'aún por ver',
  },

  keys: 'Teclas',
  key: {
    Arrows: 'las flechas',
    ArrowLeft: '←',
    ArrowRight: '→',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Home: 'Inicio',
    End: 'Fin',
    Enter: 'Intro',
    Escape: 'Esc',
    Delete: 'Supr',
  },
  places: {
    reading: 'En un capítulo',
    squares: 'En un tablero con casillas para elegir',
    exercise: 'En las líneas de una solución',
    tree: 'En el árbol',
    search: 'En el campo de jugadas',
  },
  does: {
    reading: {
      ArrowRight: 'la jugada siguiente',
      ArrowLeft: 'la jugada anterior',
      ArrowDown: 'la variante siguiente, si el foco está en una jugada o en el tablero',
      ArrowUp: 'la variante anterior',
      Home: 'el principio de las jugadas',
      End: 'el final de la línea',
    },
    squares: {
      Arrows: 'recorren las casillas',
      Enter: 'elige una pieza y luego su casilla; la barra espaciadora también',
      Escape: 'suelta la pieza',
      Delete: 'quita una pieza, donde se monta una posición',
    },
    exercise: { ArrowRight: 'la jugada siguiente', ArrowLeft: 'la jugada anterior' },
    tree: {
      ArrowRight: 'despliega una línea o pasa a la siguiente',
      ArrowLeft: 'pliega una línea o va adonde se separa',
      ArrowDown: 'la línea siguiente',
      ArrowUp: 'la línea anterior',
    },
    search: { Enter: 'busca la posición' },
  },
  typed:
    'Las jugadas también se pueden escribir, como están impresas aquí o con las letras inglesas: {move}.',

  settingsLead:
    'Claro u oscuro, letras o figuras, el tamaño de los tableros, cómo se mueve una pieza y si se oye: usted elige, y este navegador lo recuerda.',
  settingsOpen: 'Abrir los ajustes',

  offline: 'Leer sin red',
  offlineHow: [
    'No hay que hacer nada: unos segundos después de abrir cualquier página, el navegador guarda todo el curso. Abra luego la misma dirección sin red y lea, busque y practique como siempre. Si hay una edición nueva, una línea al pie de la página lo dice.',
    'El curso también se puede instalar como aplicación con su propio icono. En un ordenador, busque «Instalar» en la barra de direcciones o en el menú del navegador; en un teléfono Android elija «Añadir a pantalla de inicio» en el menú; en un iPhone o iPad toque «Compartir» y luego «Añadir a pantalla de inicio».',
    'Si el curso le llegó como carpeta, abra en ella index.html: así también funciona todo.',
  ],
  chapterMoves: 'Las jugadas de un capítulo (PGN)',
  notOffline:
    'El navegador no guarda este curso. Llévese uno de los archivos de abajo, o imprímalo.',
};
