import type { finding as english } from '../en/finding.ts';

export const finding: typeof english = {
  pageNames: {
    compare: 'Sus partidas',
    search: 'Buscar',
    tree: 'Árbol',
    positions: 'Posiciones',
    patterns: 'Patrones',
  },
  chaptersInstead: 'Sin scripts se pueden leer todos los capítulos:',

  searchTitle: 'Buscar',
  searchNoScript: 'La búsqueda necesita JavaScript, que está desactivado.',
  searchWords: 'Palabras',
  searchWordsLabel: 'Palabras del texto o el título de una posición',
  searchPosition: 'Una posición',
  searchPositionLabel: 'Un FEN o jugadas desde el comienzo',
  searchPositionHint: 'Por ejemplo',
  searchGo: 'Buscar',
  searchBoard: 'Montar una posición',
  searchBoardLead:
    'Ponga piezas en el tablero. Bastan unas pocas: lo que se encuentra las tiene en esas casillas y puede tener otras además.',
  searchBoardEmpty: 'Vaciar el tablero',
  searchBoardFull: 'Colocar todas las piezas',

  search: {
    searching: 'Buscando…',
    after: 'tras {move}',
    start: 'al comienzo',
    inChapter: 'en «{chapter}»',
    againIn: 'en «{chapter}», lugar {number}',
    board: 'La posición {where}',
    places: 'Está',
    goesOn: 'Sigue con',
    ends: 'La línea termina aquí.',
    inTree: 'Mostrar en el árbol',
    kinds: { advice: 'consejo', option: 'opción', bad: 'mala', reply: '' },
    and: 'y',
    more: 'Mostrar {count} más',

    namesFound: 'Posiciones con nombre',
    phraseFirst: 'Primero, las que tienen la frase entera.',
    chaptersFound: {
      one: 'Encontrado en una página.',
      other: 'Encontrado en {n} páginas.',
    },
    noWords: 'Ninguna página tiene «{words}».',
    moreInChapter: { one: 'y en un lugar más', other: 'y en {n} lugares más' },
    fromFolder:
      'La búsqueda por palabras necesita el sitio publicado: un navegador no deja que una página abierta desde una carpeta lea su índice. Aquí se pueden buscar posiciones y sus nombres.',
    noWasm:
      "La búsqueda por palabras necesita WebAssembly, que aquí no está permitido. El servidor de este sitio puede permitirlo: en su cabecera Content-Security-Policy, script-src necesita 'wasm-unsafe-eval'. Se pueden buscar posiciones y sus nombres.",
    noIndex:
      'No se pudo cargar la búsqueda por palabras. Se pueden buscar posiciones y sus nombres.',

    has: 'El curso tiene esta posición: {where}.',
    hasNot: 'El curso no tiene esta posición.',
    alike: 'Tiene las mismas piezas en otra posición:',
    alikeToo: 'Las mismas piezas están también en otra posición:',
    differs: {
      turn: 'juega el otro bando',
      castling: 'los derechos de enroque son otros',
      'en-passant': 'la captura al paso es otra',
    },
    but: '{where}, pero {differs}',
    knowsUpTo: 'El curso conoce esto hasta {move}; no tiene {next}.',
    knowsNot: 'El curso no tiene {next} ni ninguna de las posiciones que siguen.',
    cannotPlay: '{move} no se puede jugar.',
    cannotPlayAfter: '{move} no se puede jugar tras {last}.',
    meant: '¿Quiso decir {moves}?',
    or: 'o',
    reason: 'El motivo, en inglés: {reason}.',
    reasonLanguage: 'en',
    noFen: 'Esto no es un FEN.',
    fenHere: 'Deja de serlo aquí:',
    fenHelp:
      'Un FEN tiene las piezas fila por fila desde la octava, el bando que juega, los derechos de enroque y la casilla de captura al paso, por ejemplo {example}',
    unreadable:
      '«{words}» no es un FEN ni son jugadas. Pegue un FEN o jugadas desde el comienzo de la partida, por ejemplo {example}.',
    emptyField: 'Escriba o pegue un FEN o jugadas.',
    emptyWords: 'Escriba una palabra.',
    emptyBoard: 'Ponga una pieza en el tablero.',
    exactly: {
      one: 'Una posición tiene justamente estas piezas:',
      other: '{n} posiciones tienen justamente estas piezas:',
    },
    holding: {
      one: 'Una posición las tiene entre otras:',
      other: '{n} posiciones las tienen entre otras:',
    },
    nowhere: 'Ninguna posición del curso tiene estas piezas en estas casillas.',
  },

  treeTitle: 'El árbol del curso',
  treeLead:
    'Todas las líneas del curso desde la primera jugada. Una línea sigue hasta donde el curso conoce más de una jugada; desplegada, las muestra. Donde se juntan dos órdenes de jugadas, lo que sigue se cuenta una vez.',
  treeNoScript: 'El árbol se despliega con JavaScript, que está desactivado.',
  treeKeys:
    'Teclas: Tab o ↑ ↓ de línea en línea, ← → de jugada en jugada; sobre + y –, → despliega y ← pliega.',
  tree: {
    label: 'Las líneas del curso',
    unfoldAll: 'Desplegar todo',
    foldAll: 'Plegar todo',
    start: 'Desde el comienzo',
    elsewhere: 'Desde una posición en «{chapter}»',
    ways: '{count} continuaciones',
    unfold: '{move}, {count} continuaciones',
    after: 'tras {move}:',
    read: 'Leerlo en «{chapter}»',
    see: 'sigue como tras {move}',
    same: 'la misma posición que tras {move}',
    sample: { advice: 'Negrita', reply: 'Redonda', option: 'Cursiva' },
    legend: {
      advice: 'el consejo del curso',
      reply: 'una respuesta del otro bando',
      option: 'otra jugada del bando del curso: una opción, o mala',
    },
    kinds: { advice: 'consejo', option: 'opción', bad: 'mala', reply: '' },
  },

  positionsTitle: 'Posiciones',
  transpositions: 'Transposiciones',
  transpositionsLead:
    'Posiciones a las que el curso llega por distintos órdenes de jugadas, contadas desde donde los órdenes se separan.',
  waysHere: (count, after) => {
    const ways = `${['Ningún', 'Un', 'Dos', 'Tres', 'Cuatro', 'Cinco', 'Seis'][count] ?? count} caminos llevan aquí`;
    return after === undefined ? `${ways}:` : `${ways} desde la posición tras ${after}:`;
  },
  wayIn: (chapter) => `en «${chapter}»`,
  known: { known: 'sabida', back: 'vuelve hoy', met: 'vista' },

  patternsTitle: 'Patrones',
  patternsLead:
    'Las estructuras de peones y disposiciones de piezas que el curso nombra, y dónde están.',
  patternFrom: (chapter) => `De «${chapter}»`,
};
