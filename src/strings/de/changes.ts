import type { changes as english } from '../en/changes.ts';

export const changes: typeof english = {
  changes: {
    page: 'Was neu ist',
    lead: 'Was sich in diesem Kurs geändert hat, das Neueste zuerst.',
    feed: (course) => `${course}: was neu ist`,
    subscribe: 'Die Neuigkeiten als Feed',
    titleOf: (date) => `Neu am ${date}`,
    nothing: 'Auf dem Brett hat sich nichts geändert.',
    side: {
      white: 'Der Kurs ist jetzt für Weiß.',
      black: 'Der Kurs ist jetzt für Schwarz.',
      both: 'Der Kurs ist jetzt für beide Seiten.',
    },
    newChapter: {
      one: 'Ein neues Kapitel mit einer neuen Stellung.',
      other: 'Ein neues Kapitel mit {n} neuen Stellungen.',
    },
    droppedChapter: {
      one: 'Dieses Kapitel wurde herausgenommen, und mit ihm eine Stellung.',
      other: 'Dieses Kapitel wurde herausgenommen, und mit ihm {n} Stellungen.',
    },
    kinds: {
      advice: 'Andere Empfehlungen',
      reply: 'Neu behandelte Antworten',
      extended: 'Fortgesetzte Varianten',
      start: 'Neue Varianten',
      option: 'Neue Alternativen',
      judged: 'Neu beurteilte Züge',
      assessment: 'Andere Einschätzungen',
      dropped: 'Herausgenommen',
      exercise: 'Aufgaben',
      pattern: 'Muster',
    },
    advice: '{at}: {now}, nicht mehr {before}.',
    adviceGiven: '{at}: der Kurs empfiehlt jetzt {now}.',
    adviceWithdrawn: '{at}: {before} wird nicht mehr empfohlen.',
    mistake: (move, reason) =>
      reason === undefined ? `${move} war ein Fehler.` : `${move} war ein Fehler: ${reason}`,
    why: (reason) => `Warum: ${reason}`,
    replyAnswered: '{at}: {move}, und die Antwort ist {answer}.',
    moveAdded: '{at}: {move}.',
    ownStart: 'aus einer eigenen Stellung',
    moveDropped: '{at}: {move}.',
    calledBad: '{at}: {move} gilt jetzt als schlechter Zug.',
    calledBadNoMore: '{at}: {move} gilt nicht mehr als schlechter Zug.',
    assessment: '{at}: {now}, nicht mehr {before}.',
    positions: { one: '{n} neue Stellung', other: '{n} neue Stellungen' },
    positionsDropped: { one: '{n} Stellung', other: '{n} Stellungen' },
    exercise: {
      new: '{exercise} ist neu.',
      changed: '{exercise} hat eine andere Lösung oder beurteilt andere Züge.',
      dropped: '{exercise} wurde herausgenommen.',
    },
    pattern: {
      new: '{pattern} ist neu.',
      changed: '{pattern} hat andere Figuren.',
      said: 'Was der Kurs zu {pattern} sagt, ist neu.',
      dropped: '{pattern} wurde herausgenommen.',
    },
  },
};
