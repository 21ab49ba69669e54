import type { signs as english } from '../en/signs.ts';

export const signs: typeof english = {
  page: 'Zeichen und Tasten',
  lead: 'Was die Zeichen auf den Brettern und hinter den Zügen bedeuten, welche Tasten es gibt und wie man ohne Netz liest.',

  boards: 'Auf dem Brett',
  board: {
    turn: 'Das Dreieck am Rand zeigt, wer am Zug ist: Es steht auf der Seite, die zieht, und ist schwarz oder weiß wie sie.',
    lastMove: 'Der letzte Zug: woher die Figur kam und wo sie jetzt steht.',
    mark: 'Klammern um ein Feld: Der Text spricht von ihm.',
    empty:
      'In einem Muster stehen Klammern um Felder, die leer sind; sonst können Figuren überall stehen.',
    plan: 'Ein Plan: wohin eine Figur will.',
    threat: 'Eine Drohung: was eine Figur angreift.',
    guard: 'Eine Deckung: was eine Figur schützt.',
  },

  moves: 'In den Zügen',
  letters:
    'Figuren haben ihren Buchstaben, ein Bauer hat keinen. In den Einstellungen lassen sich Figurenzeichen oder die englischen Buchstaben wählen.',
  piece: 'Figur',
  letter: 'Buchstabe',
  english: 'Englisch',
  figurine: 'Zeichen',
  castles:
    '{short} ist die kurze, {long} die lange Rochade; x schlägt, + ist Schach, # ist matt, = ist das, was aus einem Bauern wird.',
  glyphs: 'Hinter einem Zug',
  sign: 'Zeichen',
  meaning: 'Bedeutung',

  states: 'Wie es steht',
  state: {
    here: 'hier sind Sie',
    right: 'gewusst oder richtig gelöst',
    wrong: 'nicht gewusst',
    due: 'Zeit, es wieder zu üben',
    rest: 'kommt noch',
  },

  keys: 'Tasten',
  key: {
    Arrows: 'die Pfeile',
    ArrowLeft: '←',
    ArrowRight: '→',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Home: 'Pos 1',
    End: 'Ende',
    Enter: 'Eingabe',
    Escape: 'Esc',
    Delete: 'Entf',
  },
  places: {
    reading: 'Im Kapitel',
    squares: 'Auf einem Brett mit wählbaren Feldern',
    exercise: 'In den Zügen einer Lösung',
    tree: 'Im Baum',
    search: 'Im Feld für Züge',
  },
  does: {
    reading: {
      ArrowRight: 'der nächste Zug',
      ArrowLeft: 'der Zug davor',
      ArrowDown: 'die nächste Variante, wenn ein Zug oder das Brett den Fokus hat',
      ArrowUp: 'die Variante davor',
      Home: 'der Anfang der Züge',
      End: 'das Ende der Zugfolge',
    },
    squares: {
      Arrows: 'gehen über die Felder',
      Enter: 'wählt eine Figur, dann ihr Feld; die Leertaste auch',
      Escape: 'lässt die Figur los',
      Delete: 'nimmt eine Figur weg, wo man eine Stellung aufbaut',
    },
    exercise: { ArrowRight: 'der nächste Zug', ArrowLeft: 'der Zug davor' },
    tree: {
      ArrowRight: 'klappt eine Zugfolge auf oder geht zur nächsten',
      ArrowLeft: 'klappt sie zu oder geht dorthin, wo sie abzweigt',
      ArrowDown: 'die nächste Zugfolge',
      ArrowUp: 'die Zugfolge davor',
    },
    search: { Enter: 'findet die Stellung' },
  },
  typed:
    'Züge lassen sich auch eintippen, wie sie hier gedruckt sind oder mit den englischen Buchstaben: {move}.',

  settingsLead:
    'Hell oder dunkel, Buchstaben oder Figurenzeichen, die Größe der Bretter, wie eine Figur zieht und ob man sie hört: Sie wählen, und dieser Browser merkt es sich.',
  settingsOpen: 'Einstellungen öffnen',

  offline: 'Lesen ohne Netz',
  offlineHow: [
    'Sie müssen nichts tun: Ein paar Sekunden, nachdem Sie eine Seite geöffnet haben, hat der Browser den ganzen Kurs behalten. Öffnen Sie dann dieselbe Adresse ohne Netz, und Sie lesen, suchen und üben wie sonst. Gibt es eine neue Ausgabe, sagt es eine Zeile am Fuß der Seite.',
    'Der Kurs lässt sich auch als App mit eigenem Symbol installieren. Am Computer steht „Installieren“ in der Adresszeile oder im Menü des Browsers; auf einem Android-Telefon heißt es im Menü „Zum Startbildschirm hinzufügen“; auf iPhone und iPad tippen Sie auf „Teilen“ und dann auf „Zum Home-Bildschirm“.',
    'Haben Sie den Kurs als Ordner bekommen, öffnen Sie darin index.html: Auch so geht alles.',
  ],
  chapterMoves: 'Die Züge eines Kapitels (PGN)',
  notOffline:
    'Diesen Kurs behält der Browser nicht. Nehmen Sie eine der Dateien unten mit, oder drucken Sie ihn.',
};
