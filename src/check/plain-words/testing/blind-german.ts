import { lines, type Passage, pawnEnding } from './corpus.ts';

/** Written before the rule, and not changed since. */
export const blindGerman: readonly Passage[] = [
  {
    moves: lines.isolani,
    sentences: [
      ['true', 'Der Bauer auf d5 ist isoliert, und der Springer auf d4 steht genau vor ihm.'],
      ['true', 'Der weiße Läufer auf g2 blickt auf den Bauern d5.'],
      ['false', 'Der Springer auf e4 ist der Stolz der schwarzen Stellung.'],
      ['false', 'Der weiße Springer auf d5 lässt sich nicht vertreiben.'],
      ['false', 'Der isolierte Bauer auf d4 bleibt eine dauernde Schwäche.'],
      ['true', 'Die c-Linie ist offen.'],
      ['false', 'Auf der offenen d-Linie wird bald getauscht.'],
      ['false', 'Die d-Linie ist offen, und beide Seiten haben einen Turm dafür.'],
      ['false', 'Schwarz hat noch nicht rochiert.'],
      ['true', 'Beide Seiten haben rochiert.'],
      ['true', 'Schwarz ist am Zug.'],
      ['false', 'Weiß ist am Zug und kann den Druck verstärken.'],
      ['false', 'Weiß hat einen Bauern mehr, aber Schwarz hat das Läuferpaar.'],
      ['true', 'Das Material ist ausgeglichen.'],
      ['silent', 'Ein Springer auf e4 wäre mehr wert als der Bauer.'],
      ['silent', 'Wenn der Springer auf b4 erscheint, muss Weiß aufpassen.'],
      ['silent', 'Schwarz träumt von einem Springer auf e4.'],
      ['silent', 'Weiß möchte die Läufer tauschen und dann den Turm auf d1 verdoppeln.'],
      ['silent', 'Bald wird der Turm auf e8 die Linie beherrschen.'],
      ['silent', 'Ohne den Springer auf e6 fällt der Bauer.'],
      ['silent', 'Nach 10...h6 11.Lf4 schielt der Läufer auf f4 nach c7.'],
      ['silent', 'Der Läufer blickt auf die Dame.'],
      ['false', 'Der Läufer auf d6 zielt auf h2.'],
      ['true', 'Der Springer f6 wird vom Läufer auf g5 angegriffen.'],
      ['false', 'Der Läufer f4 greift den Springer an.'],
    ],
  },
  {
    moves: lines.exchange,
    sentences: [
      ['true', 'Schwarz hat Doppelbauern auf der c-Linie.'],
      ['false', 'Schwarz hat einen Doppelbauern auf der b-Linie.'],
      ['true', 'Weiß hat rochiert.'],
      ['false', 'Beide Spieler haben schon rochiert.'],
      ['silent', 'Schwarz wird lang rochieren.'],
      ['false', 'Der Bauer d6 hält das Zentrum zusammen.'],
      ['silent', 'Der Läufer auf b5 hatte den Springer gefesselt.'],
      ['silent', 'Kann Schwarz den Bauern auf e4 nehmen?'],
      ['silent', 'Hier stand früher der Springer auf c6.'],
    ],
  },
  {
    moves: lines.mate,
    sentences: [
      ['true', 'Matt: die Dame auf f7 ist vom Läufer auf c4 gedeckt.'],
      ['false', 'Der Läufer auf b3 deckt die Dame.'],
      ['true', 'Schwarz ist matt.'],
    ],
  },
  {
    moves: lines.gambit,
    sentences: [
      ['true', 'Schwarz hat einen Bauern mehr.'],
      ['false', 'Weiß hat einen Mehrbauern.'],
      ['false', 'Weiß steht im Schach.'],
      ['silent', 'Weiß hofft, den Bauern auf e6 zurückzugewinnen.'],
      ['false', 'Der Läufer auf b4 steht sicher.'],
    ],
  },
  {
    moves: lines.trap,
    sentences: [
      ['true', 'Weiß am Zug setzt in einem Zug matt.'],
      ['false', 'Schwarz ist am Zug.'],
      ['true', 'Weiß setzt mit 7.Sd5 matt.'],
      ['false', 'Jetzt ist 7.Sf5 matt.'],
      ['silent', 'Die Dame zu nehmen war gierig.'],
    ],
  },
  {
    moves: lines.cornered,
    sentences: [
      ['true', '6...Ke7 ist der einzige Zug.'],
      ['false', '6...Kd7 ist der einzige Zug.'],
      ['false', 'Schwarz ist matt.'],
    ],
  },
  {
    fen: pawnEnding,
    sentences: [
      ['true', 'Weiß hat einen Freibauern auf d5.'],
      ['false', 'Der Freibauer auf d6 entscheidet.'],
      ['true', 'Die e-Linie ist offen.'],
      ['false', 'Der a-Bauer ist ein Freibauer.'],
      ['silent', 'Freibauern müssen laufen.'],
    ],
  },
];
