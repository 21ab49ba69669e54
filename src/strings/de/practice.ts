import type { practice as english } from '../en/practice.ts';

export const practice: typeof english = {
  practicePage: 'Üben',
  practiceLead:
    'Finden Sie die Züge des Kurses aus dem Gedächtnis. Was Sie können, wird immer seltener gefragt; was Sie nicht wissen, kommt morgen wieder.',
  practiceNeedsScript:
    'Zum Üben wird JavaScript gebraucht, das in diesem Browser abgeschaltet ist.',

  practice: {
    title: 'Üben',
    untouched: {
      one: 'In diesem Kurs ist ein Zug zu finden. Er wird Ihnen einmal gezeigt, mit dem, was der Autor dazu sagt; dann werden Sie danach gefragt.',
      other:
        'In diesem Kurs sind {n} Züge zu finden. Jeder wird Ihnen einmal gezeigt, mit dem, was der Autor dazu sagt; dann werden Sie danach gefragt.',
    },
    due: { one: 'Ein Zug kommt heute wieder.', other: '{n} Züge kommen heute wieder.' },
    nothingDue: 'Heute kommt nichts wieder.',
    changed: {
      one: 'Bei einem davon empfiehlt der Kurs jetzt etwas anderes.',
      other: 'Bei {n} davon empfiehlt der Kurs jetzt etwas anderes.',
    },
    unmet: {
      one: 'Einen Zug haben Sie noch nicht gesehen.',
      other: '{n} Züge haben Sie noch nicht gesehen.',
    },
    allMet: 'Sie haben jeden Zug gesehen.',
    nothingHere: 'Hier gibt es nichts zu üben.',
    begin: { one: 'Anfangen, mit einem Zug', other: 'Anfangen, mit {n} Zügen' },
    beginBack: { one: 'Nur den, der wiederkommt', other: 'Nur die {n}, die wiederkommen' },
    beginAhead: { one: 'Ihn noch einmal spielen', other: '{n} davon noch einmal spielen' },
    noneChosen: 'Kein Kapitel ist angehakt. Haken Sie an, was Sie üben wollen.',
    about: 'Üben: {title}',
    wholeCourse: 'Den ganzen Kurs üben',
    missedInGames: 'was in Ihren Partien fehlte',

    overview: 'Kapitel für Kapitel',
    overviewHelp:
      'Züge aus Kapiteln ohne Haken werden nicht gefragt. Der Name eines Kapitels beginnt eine Sitzung mit diesem Kapitel allein.',
    include: 'Züge aus „{title}“ fragen',
    standing: { one: '{known} von einem Zug sitzt', other: '{known} von {n} Zügen sitzen' },
    onTheWay: { one: 'ein weiterer gesehen', other: '{n} weitere gesehen' },
    seeToday: { one: 'einer heute dran', other: '{n} heute dran' },
    lately: '{n} von {answers} in vier Wochen nicht gewusst',
    before: '{n} von {answers} in den vier davor',
    whole: 'Ganzer Kurs',
    wholeHelp: 'Ein Zug, der in mehreren Kapiteln steht, zählt einmal.',

    forecast: 'Was wiederkommt, und wann',
    tomorrow: 'Morgen',
    inSecondWeek: 'Die Woche danach',
    inFourWeeks: 'In zwei bis vier Wochen',
    later: 'Später',
    moves: { one: 'ein Zug', other: '{n} Züge' },

    weeks: 'Ihre letzten Wochen',
    thisWeek: 'Diese sieben Tage',
    weekBefore: 'Die sieben davor',
    weeksAgo: 'Vor {n} Wochen',
    score: '{n} von {answers} nicht gewusst',
    scoreNone: 'alle {answers} gewusst',
    noAnswers: 'nicht geübt',
    often: 'Am häufigsten nicht gewusst',
    oftenMissed: 'Bei {answers} Antworten {n}-mal nicht gewusst, zuletzt gefragt am {day}.',

    adopted: {
      one: 'Einen dieser Züge haben Sie schon geübt, in diesem Kurs unter einem anderen Namen oder in einem anderen Kurs dieser Website. Er wird nicht als neu gefragt.',
      other:
        '{n} dieser Züge haben Sie schon geübt, in diesem Kurs unter einem anderen Namen oder in einem anderen Kurs dieser Website. Sie werden nicht als neu gefragt.',
    },
    resting: {
      one: 'Einen Zug, den Sie gelernt haben, fragt diese Ausgabe des Kurses nicht. Er ruht und kommt wieder, wenn der Kurs ihn wieder fragt.',
      other:
        '{n} Züge, die Sie gelernt haben, fragt diese Ausgabe des Kurses nicht. Sie ruhen und kommen wieder, wenn der Kurs sie wieder fragt.',
    },

    keeping: 'Ihr Stand',
    keepingHelp:
      'Er bleibt in diesem Browser und wird nirgendwohin gesendet. Um ihn in einen anderen Browser mitzunehmen, speichern Sie ihn in einer Datei und lesen Sie die Datei dort ein.',
    save: 'In eine Datei speichern',
    load: 'Aus einer Datei lesen',
    forget: 'Alles vergessen',
    forgetHelp:
      'Alles, was Sie in diesem Kurs gelernt haben, wird in diesem Browser vergessen, und Sie fangen neu an. Das lässt sich nicht rückgängig machen. Ihre Notizen und Lesezeichen und was Sie gelesen haben, bleiben; auch eine Datei, die Sie gespeichert haben: sie kann wieder gelesen werden.',
    forgetNow: 'Jetzt vergessen',
    forgotten: 'Vergessen. Sie fangen neu an.',
    notForgotten: 'Der Browser lässt die Seite nichts ändern. Nichts wurde vergessen.',
    taken: {
      one: 'Gelesen: Ein Zug wurde aus der Datei übernommen.',
      other: 'Gelesen: {n} Züge wurden aus der Datei übernommen.',
    },
    takenExercises: {
      one: '{n} Ergebnis einer Aufgabe kam dazu.',
      other: '{n} Ergebnisse von Aufgaben kamen dazu.',
    },
    takenNotes: {
      one: 'Mit ihr kam eine Notiz.',
      other: 'Mit ihr kamen {n} Notizen.',
    },
    takenOther: {
      one: 'Gelesen: Die Datei gehört zu einem anderen Kurs, „{title}“. Einer ihrer Züge wird auch hier gefragt und wurde übernommen.',
      other:
        'Gelesen: Die Datei gehört zu einem anderen Kurs, „{title}“. {n} ihrer Züge werden auch hier gefragt und wurden übernommen.',
    },
    mended: {
      one: 'Bei einem davon war ein Datum oder eine Zahl unmöglich und wurde berichtigt.',
      other: 'Bei {n} davon war ein Datum oder eine Zahl unmöglich und wurde berichtigt.',
    },
    notTaken: 'Gelesen: Nichts in der Datei ist jünger als das, was hier steht.',
    notProgress: 'Diese Datei enthält keinen Übungsstand. Nichts wurde geändert.',
    cutShort:
      'Diese Datei ist abgeschnitten. Nichts wurde geändert. Speichern Sie sie dort, wo sie herkommt, noch einmal.',
    otherCourse: 'Diese Datei gehört zu einem anderen Kurs, „{title}“. Nichts wurde geändert.',
    newer:
      'Diese Datei stammt von einer späteren Ausgabe dieser Seite. Nichts wurde geändert. Laden Sie die Seite neu und versuchen Sie es noch einmal.',
    unreadable: 'Diese Datei lässt sich nicht lesen. Nichts wurde geändert.',
    denied:
      'Dieser Browser lässt die Seite nichts aufbewahren. Sie können trotzdem üben; speichern Sie Ihren Stand in einer Datei, bevor Sie gehen.',
    full: 'Im Browser ist kein Platz mehr: Was Sie antworten, wird nicht aufbewahrt. Speichern Sie Ihren Stand in einer Datei, bevor Sie gehen, oder schaffen Sie Platz.',
    lost: 'Der Browser hat geschlossen, was er für diese Seite aufbewahrt. Die Seite versucht es wieder und schreibt dann alles, was Sie geantwortet haben. Bleiben Sie auf der Seite, bis diese Meldung verschwindet, oder speichern Sie Ihren Stand in einer Datei.',

    help: 'So geht es',
    helpText: [
      'Sie spielen die eine Seite, die Seite hier spielt die andere, mit den Zügen, die der Kurs behandelt. Züge, die heute nicht gefragt werden, werden unterwegs für Sie gespielt.',
      'Noten gibt es nicht. Ein Zug, den Sie sofort finden, wird nach Tagen wieder gefragt, dann nach Wochen, dann nach Monaten. Hat er lange gedauert oder einen Hinweis gebraucht, kommt er früher. War der erste Versuch falsch oder haben Sie sich den Zug zeigen lassen, kommt er in derselben Sitzung noch einmal und morgen wieder.',
      'Eine Sitzung hat höchstens zwölf Züge: was heute wiederkommt, und bis zu acht, die Sie noch nicht gesehen haben, zuerst die, an denen am meisten vom Kurs hängt.',
      'Ein guter Zug, den der Kurs nur erwähnt, ist kein Fehler: Sie werden noch einmal gefragt. Was sitzt, wird erst in einer Woche oder später gefragt. Ein Tag beginnt um vier Uhr morgens.',
      'Ziehen Sie auf dem Brett, oder tippen Sie zwei Felder an, oder gehen Sie mit den Pfeiltasten über die Felder und wählen mit der Eingabetaste, oder schreiben Sie den Zug.',
    ],

    session: 'Diese Sitzung',
    count: 'Zug {n} von {all}.',
    countAgain: 'Zug {n} von {all}, noch einmal.',
    comeBack: { one: 'Einer kommt wieder.', other: '{n} kommen wieder.' },
    marks: {
      here: '{n}: jetzt gefragt',
      right: '{n}: richtig',
      wrong: '{n}: nicht gewusst',
      due: '{n}: kommt wieder',
      rest: '{n}: kommt noch',
    },
    stop: 'Hier aufhören',
    sides: { white: 'Weiß', black: 'Schwarz' },
    question: 'Was spielt {side}?',
    played: '{side} spielt {move}.',
    newMove: 'Hier spielt {side} {move}.',
    newMoveHelp: 'Diesen Zug haben Sie noch nicht gesehen. Machen Sie ihn auf dem Brett.',
    changedMove: 'Jetzt spielt {side} {move}.',
    changedMoveHelp: 'Der Kurs empfiehlt hier etwas Neues. Machen Sie den Zug auf dem Brett.',
    notShown: 'Hier spielt der Kurs {move}. Spielen Sie das.',
    shown: 'Gut. In einer Weile werden Sie danach gefragt.',
    right: 'Richtig: {move}',
    wasRight: '{move} ist richtig.',
    tryAgain: 'Der ist es nicht. Noch einmal.',
    alsoGood: 'Auch gut. Welchen Zug empfiehlt der Kurs?',
    option: '{move} ist ein guter Zug, und der Kurs erwähnt ihn.',
    bad: '{move} ist ein Fehler, sagt der Kurs.',
    other: '{move} geht, ist aber nicht der Zug des Kurses.',
    entry: 'Ziehen Sie auf dem Brett, oder schreiben Sie den Zug',
    entryExample: 'zum Beispiel {move}',
    hint: 'Hinweis',
    hinted: 'Gezogen wird: {piece} auf {square}.',
    show: 'Zeigen',
    given: 'Der Kurs spielt {move}',
    givenHelp: 'Der Zug kommt vor dem Ende noch einmal.',
    on: 'Weiter',
    nextLine: 'Nächste Variante',
    finish: 'Zum Ergebnis',

    fromMemory: {
      one: 'Diesmal nicht aus dem Gedächtnis.',
      other: '{right} von {n} aus dem Gedächtnis.',
    },
    allFromMemory: { one: 'Aus dem Gedächtnis gefunden.', other: 'Alle {n} aus dem Gedächtnis.' },
    answeredNone: 'Sie haben vor der ersten Antwort aufgehört.',
    lookAgain: { one: 'Einen noch einmal ansehen', other: '{n} noch einmal ansehen' },
    youPlayed: 'Sie haben {move} gespielt.',
    youWereShown: 'Sie haben sich den Zug zeigen lassen.',
    tomorrowAgain: 'Er kommt morgen wieder.',
    readThere: 'Die Stelle lesen',
    seen: {
      one: 'Ein neuer Zug wurde gezeigt und noch nicht gefragt.',
      other: '{n} neue Züge wurden gezeigt und noch nicht gefragt.',
    },
    again: { one: 'Diesen noch einmal', other: 'Diese {n} noch einmal' },
    more: { one: 'Weiter, mit noch einem', other: 'Weiter, mit noch {n}' },
    toExercises: { one: 'Dazu eine Aufgabe', other: 'Dazu {n} Aufgaben' },
    exercise: 'Eine Aufgabe',
    nextExercise: 'Noch eine Aufgabe',
    back: 'Zurück zur Übersicht',
  },
};
