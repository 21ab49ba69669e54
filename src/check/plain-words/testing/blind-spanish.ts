import { lines, type Passage, pawnEnding } from './corpus.ts';

/** Written before the rule, and not changed since. */
export const blindSpanish: readonly Passage[] = [
  {
    moves: lines.isolani,
    sentences: [
      ['true', 'El peón de d5 está aislado, y el caballo de d4 lo bloquea.'],
      ['true', 'El alfil blanco de g2 mira al peón de d5.'],
      ['false', 'El caballo de e4 es el orgullo de la posición negra.'],
      ['false', 'El caballo blanco de d5 no puede ser expulsado.'],
      ['false', 'El peón aislado de d4 es una debilidad duradera.'],
      ['true', 'La columna c está abierta.'],
      ['false', 'La columna d está abierta y los dos bandos tienen una torre para ella.'],
      ['false', 'Las negras todavía no han enrocado.'],
      ['true', 'Los dos bandos han enrocado.'],
      ['true', 'Juegan las negras.'],
      ['false', 'Juegan blancas: ¿cómo aumentan la presión?'],
      ['false', 'Las blancas tienen un peón de más, pero las negras tienen actividad.'],
      ['true', 'El material está igualado.'],
      ['silent', 'Un caballo en e4 valdría más que el peón.'],
      ['silent', 'Si el caballo aparece en b4, las blancas deben tener cuidado.'],
      ['silent', 'Las negras sueñan con un caballo en e4.'],
      ['silent', 'Las blancas quieren cambiar los alfiles y llevar la torre a d1.'],
      ['silent', 'Pronto la torre de e8 dominará la columna.'],
      ['silent', 'Sin el caballo de e6 cae el peón.'],
      ['silent', 'Tras 10...h6 11.Af4 el alfil de f4 mira a c7.'],
      ['silent', 'El alfil mira a la dama.'],
      ['false', 'El alfil de d6 apunta a h2.'],
      ['true', 'El caballo de f6 está atacado por el alfil de g5.'],
      ['false', 'El alfil de f4 ataca al caballo.'],
      ['false', 'La torre en e1 ya está bien colocada.'],
    ],
  },
  {
    moves: lines.exchange,
    sentences: [
      ['true', 'Las negras tienen peones doblados en la columna c.'],
      ['false', 'Las negras tienen peones doblados en la columna b.'],
      ['true', 'Las blancas han enrocado.'],
      ['false', 'Ambos bandos han enrocado ya.'],
      ['silent', 'Las negras enrocarán largo.'],
      ['false', 'El peón de d6 sostiene el centro.'],
      ['silent', 'El alfil de b5 clavaba el caballo.'],
      ['silent', '¿Pueden las negras tomar el peón de e4?'],
      ['silent', 'Aquí estaba antes el caballo de c6.'],
    ],
  },
  {
    moves: lines.mate,
    sentences: [
      ['true', 'Jaque mate: el alfil de c4 defiende la dama de f7.'],
      ['false', 'El alfil de b3 defiende la dama.'],
      ['true', 'Es mate.'],
    ],
  },
  {
    moves: lines.gambit,
    sentences: [
      ['true', 'Las negras tienen un peón de más.'],
      ['false', 'Las blancas tienen un peón más.'],
      ['false', 'Las blancas están en jaque.'],
      ['silent', 'Las blancas esperan recuperar el peón de e6.'],
      ['false', 'El alfil de b4 está seguro.'],
    ],
  },
  {
    moves: lines.trap,
    sentences: [
      ['true', 'Las blancas dan mate en una jugada.'],
      ['false', 'Les toca jugar a las negras.'],
      ['true', 'Las blancas dan mate con 7.Cd5.'],
      ['false', 'Ahora 7.Cf5 es mate.'],
      ['silent', 'Tomar la dama fue codicioso.'],
    ],
  },
  {
    moves: lines.cornered,
    sentences: [
      ['true', '6...Re7 es la única jugada.'],
      ['false', '6...Rd7 es la única jugada.'],
      ['false', 'Las negras han recibido mate.'],
    ],
  },
  {
    fen: pawnEnding,
    sentences: [
      ['true', 'Las blancas tienen un peón pasado en d5.'],
      ['false', 'El peón pasado de d6 decide.'],
      ['true', 'La columna e está abierta.'],
      ['false', 'El peón a es un peón pasado.'],
      ['silent', 'Los peones pasados deben avanzar.'],
    ],
  },
];
