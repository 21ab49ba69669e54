import type { finding as english } from '../en/finding.ts';

export const finding: typeof english = {
  pageNames: {
    compare: 'Eigene Partien',
    search: 'Suche',
    tree: 'Baum',
    positions: 'Stellungen',
    patterns: 'Muster',
  },
  chaptersInstead: 'Ohne Skripte sind alle Kapitel zu lesen:',

  searchTitle: 'Suche',
  searchNoScript: 'Die Suche braucht JavaScript, und das ist ausgeschaltet.',
  searchWords: 'Wörter',
  searchWordsLabel: 'Wörter des Textes oder der Titel einer Stellung',
  searchPosition: 'Eine Stellung',
  searchPositionLabel: 'Eine FEN oder Züge von Anfang an',
  searchPositionHint: 'Etwa',
  searchGo: 'Suchen',
  searchBoard: 'Ein Brett aufstellen',
  searchBoardLead:
    'Stellen Sie Figuren auf das Brett. Wenige genügen: Was gefunden wird, hat sie auf diesen Feldern und vielleicht andere daneben.',
  searchBoardEmpty: 'Brett leeren',
  searchBoardFull: 'Alle Figuren aufstellen',

  search: {
    searching: 'Es wird gesucht …',
    after: 'nach {move}',
    start: 'zu Beginn',
    inChapter: 'in „{chapter}“',
    againIn: 'in „{chapter}“, Stelle {number}',
    board: 'Die Stellung {where}',
    places: 'Steht',
    goesOn: 'Weiter mit',
    ends: 'Die Variante endet hier.',
    inTree: 'Im Baum zeigen',
    kinds: { advice: 'Empfehlung', option: 'Möglichkeit', bad: 'schlecht', reply: '' },
    and: 'und',
    more: '{count} weitere zeigen',

    namesFound: 'Benannte Stellungen',
    phraseFirst: 'Voran stehen die mit dem ganzen Wortlaut.',
    chaptersFound: { one: 'Auf einer Seite gefunden.', other: 'Auf {n} Seiten gefunden.' },
    noWords: 'Auf keiner Seite steht „{words}“.',
    moreInChapter: {
      one: 'und an einer weiteren Stelle',
      other: 'und an {n} weiteren Stellen',
    },
    fromFolder:
      'Die Suche nach Wörtern braucht die veröffentlichte Site: Ein Browser lässt eine Seite, die aus einem Ordner geöffnet wurde, ihr Verzeichnis nicht lesen. Stellungen und ihre Namen lassen sich hier suchen.',
    noWasm:
      "Die Suche nach Wörtern braucht WebAssembly, und das ist hier nicht erlaubt. Der Host dieser Site kann es erlauben: In seinem Header Content-Security-Policy gehört zu script-src noch 'wasm-unsafe-eval'. Stellungen und ihre Namen lassen sich suchen.",
    noIndex:
      'Die Suche nach Wörtern ließ sich nicht laden. Stellungen und ihre Namen lassen sich suchen.',

    has: 'Der Kurs hat diese Stellung: {where}.',
    hasNot: 'Der Kurs hat diese Stellung nicht.',
    alike: 'Dieselben Figuren stehen in einer anderen Stellung:',
    alikeToo: 'Dieselben Figuren stehen auch in einer anderen Stellung:',
    differs: {
      turn: 'die andere Seite ist am Zug',
      castling: 'die Rochaderechte sind andere',
      'en-passant': 'das Schlagen en passant ist ein anderes',
    },
    but: '{where}, aber {differs}',
    knowsUpTo: 'Der Kurs kennt das bis {move}; {next} hat er nicht.',
    knowsNot: 'Der Kurs hat {next} nicht und auch keine der Stellungen danach.',
    cannotPlay: '{move} kann nicht gespielt werden.',
    cannotPlayAfter: '{move} kann nach {last} nicht gespielt werden.',
    meant: 'War {moves} gemeint?',
    or: 'oder',
    reason: 'Der Grund, auf Englisch: {reason}.',
    reasonLanguage: 'en',
    noFen: 'Das ist keine FEN.',
    fenHere: 'Hier stimmt sie nicht mehr:',
    fenHelp:
      'Eine FEN hat die Figuren Reihe für Reihe von der achten an, die Seite am Zug, die Rochaderechte und das Feld für das Schlagen en passant, etwa {example}',
    unreadable:
      '„{words}“ ist weder eine FEN noch sind es Züge. Fügen Sie eine FEN ein oder Züge von Anfang der Partie an, etwa {example}.',
    emptyField: 'Geben Sie eine FEN oder Züge ein.',
    emptyWords: 'Geben Sie ein Wort ein.',
    emptyBoard: 'Stellen Sie eine Figur auf das Brett.',
    exactly: {
      one: 'Eine Stellung hat genau diese Figuren:',
      other: '{n} Stellungen haben genau diese Figuren:',
    },
    holding: {
      one: 'Eine Stellung hat sie neben anderen:',
      other: '{n} Stellungen haben sie neben anderen:',
    },
    nowhere: 'Keine Stellung des Kurses hat diese Figuren auf diesen Feldern.',
  },

  treeTitle: 'Der Baum des Kurses',
  treeLead:
    'Alle Varianten des Kurses vom ersten Zug an. Eine Variante läuft, bis der Kurs mehr als einen Zug kennt; aufgeklappt zeigt sie diese. Wo zwei Zugfolgen zusammenkommen, steht das Weitere einmal.',
  treeNoScript: 'Der Baum klappt mit JavaScript auf, und das ist ausgeschaltet.',
  treeKeys:
    'Tasten: Tab oder ↑ ↓ von Zeile zu Zeile, ← → von Zug zu Zug; auf + und – klappt → auf und ← zu.',
  tree: {
    label: 'Die Varianten des Kurses',
    unfoldAll: 'Alles aufklappen',
    foldAll: 'Alles zuklappen',
    start: 'Von Anfang an',
    elsewhere: 'Von einer Stellung in „{chapter}“ an',
    ways: '{count} Fortsetzungen',
    unfold: '{move}, {count} Fortsetzungen',
    after: 'nach {move}:',
    read: 'Lesen in „{chapter}“',
    see: 'geht weiter wie nach {move}',
    same: 'dieselbe Stellung wie nach {move}',
    sample: { advice: 'Fett', reply: 'Gerade', option: 'Kursiv' },
    legend: {
      advice: 'die Empfehlung des Kurses',
      reply: 'eine Antwort der anderen Seite',
      option: 'ein anderer Zug der Seite des Kurses: möglich oder schlecht',
    },
    kinds: { advice: 'Empfehlung', option: 'Möglichkeit', bad: 'schlecht', reply: '' },
  },

  positionsTitle: 'Stellungen',
  transpositions: 'Zugumstellungen',
  transpositionsLead:
    'Stellungen, die der Kurs in verschiedenen Zugfolgen erreicht, gezeigt von dort an, wo die Zugfolgen sich trennen.',
  waysHere: (count, after) => {
    const ways = `${['Keine', 'Ein', 'Zwei', 'Drei', 'Vier', 'Fünf', 'Sechs'][count] ?? count} Wege führen hierher`;
    return after === undefined ? `${ways}:` : `${ways}, aus der Stellung nach ${after}:`;
  },
  wayIn: (chapter) => `in „${chapter}“`,
  known: { known: 'gewusst', back: 'kommt heute wieder', met: 'kennengelernt' },

  patternsTitle: 'Muster',
  patternsLead:
    'Die Bauernstrukturen und Figurenaufstellungen, die der Kurs nennt, und wo sie stehen.',
  patternFrom: (chapter) => `Aus „${chapter}“`,
};
