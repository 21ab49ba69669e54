import type { Strings } from '../index.ts';

export const changes: Pick<Strings, 'changes'> = {
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
    newChapter: (positions) =>
      `Ein neues Kapitel mit ${positions} ${positions === 1 ? 'neuen Stellung' : 'neuen Stellungen'}.`,
    droppedChapter: (positions) =>
      `Dieses Kapitel wurde herausgenommen, und mit ihm ${positions} ${positions === 1 ? 'Stellung' : 'Stellungen'}.`,
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
    why: (reason) => `Warum: ${reason}`,
    replyAnswered: '{at}: {move}, und die Antwort ist {answer}.',
    moveAdded: '{at}: {move}.',
    ownStart: 'aus einer eigenen Stellung',
    moveDropped: '{at}: {move}.',
    calledBad: '{at}: {move} gilt jetzt als schlechter Zug.',
    calledBadNoMore: '{at}: {move} gilt nicht mehr als schlechter Zug.',
    assessment: '{at}: {now}, nicht mehr {before}.',
    positions: (count) => `${count} neue Stellungen`,
    positionsDropped: (count) => `${count} Stellungen`,
    exercise: {
      new: '{exercise} ist neu.',
      changed: '{exercise} hat eine andere Lösung oder beurteilt andere Züge.',
      dropped: '{exercise} wurde herausgenommen.',
    },
    pattern: {
      new: '{pattern} ist neu.',
      changed: '{pattern} hat andere Figuren.',
      dropped: '{pattern} wurde herausgenommen.',
    },
  },
};
