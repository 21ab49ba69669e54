import type { compare as english } from '../en/compare.ts';

/** German. */
export const compare: typeof english = {
  title: 'Eigene Partien vergleichen',
  lead: 'Nach dem Spielen: Wo haben Ihre Partien diesen Kurs verlassen, und was empfiehlt er dort? Eine Partie genügt, es können auch Tausende sein. Sie bleiben auf diesem Gerät; nichts wird gesendet.',
  needsScript: 'Zum Vergleichen braucht es JavaScript; in diesem Browser ist es ausgeschaltet.',
  choose: 'PGN-Dateien wählen',
  drop: 'oder hier ablegen',
  paste: 'Oder Partien einfügen',
  go: 'Vergleichen',
  stop: 'Anhalten',
  progress: 'Vergleich läuft',
  read: { one: '{n} Partie gelesen', other: '{n} Partien gelesen' },
  stopped: {
    one: 'Angehalten nach {n} Partie; das ist ihr Ergebnis.',
    other: 'Angehalten nach {n} Partien; das ist ihr Ergebnis.',
  },
  done: { one: '{n} Partie wurde verglichen.', other: '{n} Partien wurden verglichen.' },
  noGames:
    'Keine Partie gefunden. PGN hat Angaben wie [White "…"] und Züge wie 1. e4 e5 (englische Buchstaben).',
  failed: 'Die Partien konnten nicht zu Ende gelesen werden: {reason}',

  result: 'Was die Partien zeigen',
  figures: {
    games: 'Partien',
    met: 'Im Kurs',
    within: 'Endeten im Kurs',
    apart: 'Nie im Kurs',
    otherSide: 'Mit der anderen Farbe',
    empty: 'Ohne Züge',
    variant: 'Andere Varianten',
    broken: 'Nicht nachzuspielen',
  },
  lastKnown:
    'Eine Partie verlässt den Kurs in der letzten Stellung, die er kennt, durch welche Zugfolge sie auch dorthin kam.',
  player: 'Nur Partien von',
  playerHint:
    'Ein Name oder ein Teil davon: Nur Partien zählen, in denen diese Person die Farbe des Kurses hatte ({side}).',
  playerHintBoth: 'Ein Name oder ein Teil davon.',
  playerFound:
    '{name} steht in {n} von {count} Partien: Nur diese zählen. Ändern Sie den Namen, oder leeren Sie das Feld für alle Partien.',
  practise: 'Üben, was in Ihren Partien fehlte',
  practiseCount: { one: '{n} Stellung', other: '{n} Stellungen' },
  nobody: 'Keine Partie nennt diesen Namen.',

  advisedYou: 'Wo Sie den Kurs verlassen haben',
  advised: 'Wo {side} den Kurs verlassen hat',
  advisedHint: 'Diese Stellungen lohnt es, noch einmal anzusehen; die häufigsten zuerst.',
  asideYou: 'Wo Sie gespielt haben, was der Kurs nur erwähnt',
  aside: 'Wo {side} gespielt hat, was der Kurs nur erwähnt',
  asideHint:
    'Der Kurs kennt den Zug, als Alternative oder als schlechten, und empfiehlt einen anderen.',
  asideMove: {
    option:
      'Vorher, {after}, wurde {played} gespielt: Der Kurs erwähnt das und empfiehlt {advice}.',
    bad: 'Vorher, {after}, wurde {played} gespielt: Der Kurs nennt das schlecht und empfiehlt {advice}.',
  },
  covered: 'Antworten, die der Kurs nicht behandelt',
  coveredHint: 'Hier hat {side} etwas anderes gespielt, als der Kurs erwartet.',
  known: 'Wo Partien den Kurs verlassen',
  knownHint: 'Der Kurs hat hier Züge, gespielt wurden andere.',
  ended: 'Wo der Kurs endet',
  endedHint: 'Bis hierher folgten ihm die Partien; dann gingen sie weiter.',
  noLeaving: 'Keine Partie hat den Kurs verlassen.',

  position: 'Stellung',
  count: 'Partien',
  advice: 'Der Kurs',
  played: 'Gespielt',
  score: 'Ergebnis für {side}',
  scoreInWords: '{won} gewonnen, {drawn} remis, {lost} verloren',
  showGames: { one: '{n} Partie', other: '{n} Partien' },
  moreMoves: { one: 'und {n} weiterer Zug', other: 'und {n} weitere Züge' },
  morePositions: { one: '{n} weitere Stellung zeigen', other: '{n} weitere Stellungen zeigen' },

  list: 'Partie für Partie',
  listHere: 'Die hier gezählten Partien: {position}',
  allGames: 'Alle Partien zeigen',
  moreGames: { one: '{n} weitere Partie zeigen', other: '{n} weitere Partien zeigen' },

  broken: {
    one: '{n} Partie lässt sich nicht nachspielen und zählt nicht',
    other: '{n} Partien lassen sich nicht nachspielen und zählen nicht',
  },
  game: 'Partie {n}',
  faults: {
    illegal: '{move} ist nicht spielbar.',
    ambiguous: '{move} ist nicht eindeutig.',
    unreadable: '„{text}“ bei Zug {at} ist kein Zug.',
    'comment-unclosed': 'Ein Kommentar wird nie geschlossen: {text}',
    'variation-unclosed': 'Eine Variante wird nie geschlossen: {text}',
    start: 'Die Anfangsstellung ist keine Stellung: {text}',
    'too-long': 'Sie ist länger, als eine Partie sein kann.',
  },
  variant: 'Eine andere Schachvariante: {text}',
  empty: 'Sie hat keine Züge.',
};
