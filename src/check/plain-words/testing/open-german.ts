import { lines, type Passage, pawnEnding } from './corpus.ts';

/** Written beside the rule. */
export const openGerman: readonly Passage[] = [
  {
    moves: lines.isolani,
    sentences: [
      ['true', 'Der Läufer c8 hat die ganze Diagonale.'],
      ['false', 'Der Läufer c7 hat die ganze Diagonale.'],
      ['false', 'Der schwarze Turm steht auf e8 und wartet.'],
      ['true', 'Die Springer auf c3 und d4 arbeiten zusammen.'],
      ['false', 'Die Springer auf c3 und e4 arbeiten zusammen.'],
      ['false', 'Der d5-Springer beherrscht das Brett.'],
      ['silent', 'Der Springer gehört auf e4.'],
      ['silent', 'Schwarz stellt die Dame auf b6.'],
      ['silent', 'Schwarz bringt den Turm auf e8 ins Spiel.'],
      ['silent', 'Der Läufer stünde auf e6 besser als auf g4.'],
      ['silent', 'Hätte Weiß nicht rochiert, wäre das Schach auf b4 unangenehm.'],
      ['silent', 'Weiß plant e2-e3, und der Turm auf c1 kommt danach.'],
      ['silent', 'Der Turm auf e8 wird die stärkste Figur sein.'],
      ['true', 'Der d-Bauer ist isoliert.'],
      ['false', 'Der e-Bauer ist isoliert.'],
      ['silent', 'Isolierte Bauern sind im Endspiel schwach.'],
      ['silent', 'Ist der Bauer auf d4 isoliert?'],
      ['true', 'Die e-Linie ist halboffen.'],
      ['false', 'Die halboffene b-Linie ist der Trumpf.'],
      ['silent', 'Sobald die d-Linie offen ist, verschwinden die Türme.'],
      ['silent', 'Mit Weiß am Zug fiele der Bauer auf e5.'],
      ['silent', 'Weiß zieht den Turm.'],
      ['silent', 'In der Tarrasch-Verteidigung ist der Läufer auf d6 ein gewohnter Anblick.'],
      ['silent', 'Schwarz hat keinen Bauern weniger.'],
      ['silent', 'Nimmt Schwarz zu früh, hat Weiß bald einen Bauern mehr.'],
      ['false', 'Schwarz hat einen Bauern weniger, aber die Figuren atmen.'],
      ['silent', 'Se5, und der Springer auf e5 ist ein Riese.'],
      ['false', 'Jetzt gewinnt 10...Ld5 den Läufer.'],
      ['true', 'Jetzt stellt 10...h6 die Frage.'],
      ['silent', 'In einer alten Partie geschah 10...Dd3.'],
      ['true', 'Nach 10...h6 11.Le3 Te8 12.Tc1 haben beide, was sie wollen.'],
      ['false', 'Schlecht ist 10...Sxe4.'],
    ],
  },
  {
    moves: lines.exchange,
    sentences: [
      ['true', 'Der Doppelbauer auf der c-Linie ist der Preis für die Läufer.'],
      ['false', 'Der Doppelbauer auf der f-Linie ist der Preis für die Läufer.'],
      ['silent', 'Schwarz nimmt einen Doppelbauern auf der b-Linie in Kauf.'],
      ['false', 'Weiß hat noch nicht rochiert.'],
      ['silent', 'Nachdem auch Schwarz rochiert hat, beginnt der Kampf.'],
      ['silent', 'Der Läufer auf b5 ist verschwunden.'],
      ['false', 'Schwarz hat eine Figur mehr.'],
    ],
  },
  {
    moves: lines.gambit,
    sentences: [
      ['false', 'Schwarz hat zwei Bauern mehr.'],
      ['true', 'Weiß ist am Zug.'],
      ['silent', 'Weiß hat einen Bauern für Zeit gegeben.'],
      ['false', 'Das Material ist gleich.'],
    ],
  },
  {
    moves: lines.elephant,
    sentences: [
      ['true', 'Schach, und Weiß muss die Dame zurückgeben.'],
      ['true', 'Weiß hat nur einen legalen Zug.'],
      ['false', 'Schwarz steht im Schach.'],
      ['false', 'Matt.'],
    ],
  },
  {
    fen: pawnEnding,
    sentences: [
      ['false', 'Schwarz hat einen Freibauern auf b7.'],
      ['true', 'Weiß hat einen Bauern mehr.'],
      ['silent', 'Weiß bildet einen Freibauern auf der a-Linie.'],
    ],
  },
  {
    moves: lines.isolani,
    stands: 'prose',
    sentences: [
      ['true', 'Der Springer auf d4 steht gut.'],
      ['false', 'Die Dame auf b3 greift b7 an.'],
      ['silent', 'In dieser Eröffnung sieht man den Läufer auf d6 oft.'],
    ],
  },
];
