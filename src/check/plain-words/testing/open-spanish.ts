import { lines, type Passage, pawnEnding } from './corpus.ts';

/** Written beside the rule. */
export const openSpanish: readonly Passage[] = [
  {
    moves: lines.isolani,
    sentences: [
      ['true', 'El alfil de c8 tiene toda la diagonal.'],
      ['false', 'El alfil de c7 tiene toda la diagonal.'],
      ['false', 'La torre negra está en e8 y espera su momento.'],
      ['true', 'Los caballos de c3 y d4 colaboran.'],
      ['false', 'Los caballos de c3 y e4 colaboran.'],
      ['false', 'La dama blanca de b3 presiona.'],
      ['silent', 'El caballo debe ir a e4.'],
      ['silent', 'Las negras colocan la dama en b6.'],
      ['silent', 'Las negras llevan la torre de a8 a c8.'],
      ['silent', 'El alfil estaría mejor en e6 que en g4.'],
      ['silent', 'Si las blancas no han enrocado, el jaque en b4 molesta.'],
      ['silent', 'Las blancas planean e2-e3 y luego la torre de c1 entra en juego.'],
      ['silent', 'La torre de e8 será la pieza más fuerte.'],
      ['true', 'El peón d está aislado.'],
      ['false', 'El peón e está aislado.'],
      ['silent', 'Los peones aislados son débiles en el final.'],
      ['silent', '¿Está aislado el peón de d4?'],
      ['true', 'La columna e está semiabierta.'],
      ['false', 'La columna semiabierta b es su baza.'],
      ['silent', 'Cuando la columna d esté abierta, se cambiarán las torres.'],
      ['silent', 'Con las blancas al turno caería el peón de e5.'],
      ['silent', 'Juegan bien las blancas.'],
      ['silent', 'En la Defensa Tarrasch el alfil de d6 es habitual.'],
      ['silent', 'Las negras no tienen un peón de menos.'],
      ['false', 'Las negras tienen un peón de menos, pero sus piezas respiran.'],
      ['silent', 'Ce5, y el caballo de e5 es un gigante.'],
      ['false', 'Ahora 10...Ad5 gana el alfil.'],
      ['true', 'Ahora 10...h6 pregunta al alfil.'],
      ['silent', 'En una partida antigua se jugó 10...Dd3.'],
      ['true', 'Tras 10...h6 11.Ae3 Te8 12.Tc1 cada bando tiene lo que quería.'],
      ['false', 'Es malo 10...Cxe4.'],
      ['silent', 'El caballo entra en e4.'],
    ],
  },
  {
    moves: lines.exchange,
    sentences: [
      ['true', 'Los peones doblados de la columna c son el precio de los alfiles.'],
      ['false', 'Los peones doblados de la columna f son el precio de los alfiles.'],
      ['silent', 'Las negras aceptan peones doblados en la columna b.'],
      ['false', 'Las blancas todavía no han enrocado.'],
      ['silent', 'Después de que las negras han enrocado empieza la lucha.'],
      ['silent', 'El alfil de b5 ha desaparecido.'],
      ['false', 'Las negras tienen una pieza de más.'],
    ],
  },
  {
    moves: lines.gambit,
    sentences: [
      ['false', 'Las negras tienen dos peones de más.'],
      ['true', 'Juegan las blancas.'],
      ['silent', 'Las blancas han dado un peón por tiempo.'],
      ['false', 'El material está igualado.'],
    ],
  },
  {
    moves: lines.elephant,
    sentences: [
      ['true', 'Jaque, y las blancas deben devolver la dama.'],
      ['true', 'Las blancas tienen una sola jugada legal.'],
      ['false', 'Las negras están en jaque.'],
      ['false', 'Mate.'],
    ],
  },
  {
    fen: pawnEnding,
    sentences: [
      ['false', 'Las negras tienen un peón pasado en b7.'],
      ['true', 'Las blancas tienen un peón de más.'],
      ['silent', 'Las blancas crean un peón pasado en la columna a.'],
    ],
  },
  {
    moves: lines.isolani,
    stands: 'prose',
    sentences: [
      ['true', 'El caballo de d4 está bien situado.'],
      ['false', 'La dama de b3 ataca b7.'],
      ['silent', 'En esta apertura se ve mucho el alfil de d6.'],
    ],
  },
];
