import type { practice as english } from '../en/practice.ts';

export const practice: typeof english = {
  practicePage: 'Üben',
  practiceLead:
    'Spielen Sie die Züge des Kurses aus dem Gedächtnis. Was Sie können, wird immer seltener gefragt; was Sie verfehlen, kommt morgen wieder.',
  practiceNeedsScript:
    'Zum Üben wird JavaScript gebraucht, das in diesem Browser abgeschaltet ist.',

  practice: {
    moves: { one: 'einen Zug', other: '{n} Züge' },
    untouched:
      'Sie haben noch nicht begonnen. Der Kurs empfiehlt {moves}. Jeder wird Ihnen einmal gezeigt, mit dem, was der Autor dazu sagt; dann werden Sie danach gefragt.',
    due: { one: 'Ein Zug ist heute fällig.', other: '{n} Züge sind heute fällig.' },
    nothingDue: 'Heute ist nichts fällig.',
    changed: {
      one: 'Bei einem davon rät der Kurs jetzt etwas anderes.',
      other: 'Bei {n} davon rät der Kurs jetzt etwas anderes.',
    },
    fresh: { one: 'Ein Zug ist noch neu für Sie.', other: '{n} Züge sind noch neu für Sie.' },
    allSeen: 'Sie haben jeden Zug dieser Kapitel gesehen.',
    ahead: 'Morgen fällig: {tomorrow}; in sieben Tagen: {week}.',
    beginDue: { one: 'Den fälligen Zug spielen', other: 'Die {n} fälligen Züge spielen' },
    beginNew: { one: 'Einen neuen Zug lernen', other: '{n} neue Züge lernen' },
    noneChosen: 'Kein Kapitel ist angehakt. Haken Sie an, was Sie üben wollen.',

    overview: 'Was Sie können',
    overviewHelp: 'Geübt wird nur, was angehakt ist.',
    chapter: 'Kapitel',
    known: 'Sicher',
    learning: 'In Arbeit',
    unseen: 'Neu',
    dueNow: 'Fällig',
    whole: 'Ganzer Kurs',
    wholeHelp: 'Ein Zug, der in mehreren Kapiteln steht, zählt einmal.',
    adopted: {
      one: 'Einen dieser Züge haben Sie schon geübt, in diesem Kurs unter einem anderen Namen oder in einem anderen Kurs dieser Website. Er wird nicht als neu gefragt.',
      other:
        '{n} dieser Züge haben Sie schon geübt, in diesem Kurs unter einem anderen Namen oder in einem anderen Kurs dieser Website. Sie werden nicht als neu gefragt.',
    },
    resting: {
      one: 'Ein Zug, den Sie gelernt haben, steht nicht in dieser Ausgabe des Kurses. Er ruht und kommt wieder, wenn der Kurs ihn wieder bringt.',
      other:
        '{n} Züge, die Sie gelernt haben, stehen nicht in dieser Ausgabe des Kurses. Sie ruhen und kommen wieder, wenn der Kurs sie wieder bringt.',
    },

    keeping: 'Ihr Stand',
    keepingHelp:
      'Er bleibt in diesem Browser und wird nirgendwohin gesendet. Um ihn in einen anderen Browser mitzunehmen, speichern Sie ihn in einer Datei und lesen Sie die Datei dort ein.',
    save: 'In eine Datei speichern',
    load: 'Aus einer Datei lesen',
    forget: 'Alles vergessen',
    forgetHelp:
      'Alles, was Sie in diesem Kurs gelernt haben, wird in diesem Browser vergessen, und Sie fangen neu an. Das lässt sich nicht rückgängig machen. Eine Datei, die Sie gespeichert haben, bleibt und kann wieder gelesen werden.',
    forgetNow: 'Jetzt vergessen',
    forgotten: 'Vergessen. Sie fangen neu an.',
    notForgotten: 'Der Browser lässt die Seite nichts ändern. Nichts wurde vergessen.',
    taken: {
      one: 'Gelesen: Ein Zug wurde aus der Datei übernommen.',
      other: 'Gelesen: {n} Züge wurden aus der Datei übernommen.',
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
      'Sie spielen die eine Seite, die Seite hier spielt die andere, mit den Zügen, die der Kurs behandelt. Züge, die nicht fällig sind, werden unterwegs für Sie gespielt.',
      'Noten gibt es nicht. Ein Zug, den Sie sofort finden, wird nach Tagen wieder gefragt, dann nach Wochen, dann nach Monaten. Hat er lange gedauert oder einen Hinweis gebraucht, kommt er früher. War der erste Versuch falsch oder haben Sie sich den Zug zeigen lassen, kommt er in derselben Sitzung noch einmal und morgen wieder.',
      'Ein guter Zug, den der Kurs nur erwähnt, ist kein Fehler: Sie werden noch einmal gefragt. „Sicher“ ist, was erst in einer Woche oder später gefragt wird. Ein Tag beginnt um vier Uhr morgens.',
      'Ziehen Sie auf dem Brett, oder tippen Sie zwei Felder an, oder gehen Sie mit den Pfeiltasten über die Felder und wählen mit der Eingabetaste, oder tippen Sie den Zug ein.',
    ],

    session: 'Die Variante',
    left: { one: 'Noch ein Zug', other: 'Noch {n} Züge' },
    stop: 'Hier aufhören',
    yourMove: 'Sie sind am Zug.',
    played: '{side} spielt {move}.',
    newMove: 'Neu für Sie: Der Kurs spielt {move}. Spielen Sie es auf dem Brett.',
    changedMove: 'Neuer Rat: Hier spielt der Kurs jetzt {move}. Spielen Sie es auf dem Brett.',
    notShown: 'Hier spielt der Kurs {move}. Spielen Sie das.',
    shown: 'Gut. In einer Weile werden Sie danach gefragt.',
    right: '{move} ist richtig.',
    option: '{move} ist auch gut, der Kurs erwähnt es. Er rät zu einem anderen Zug: zu welchem?',
    bad: '{move} ist ein Fehler. Versuchen Sie es noch einmal.',
    other: '{move} geht, aber der Kurs spielt hier etwas anderes. Versuchen Sie es noch einmal.',
    hint: 'Hinweis',
    hinted: 'Gezogen wird: {piece} auf {square}.',
    show: 'Zug zeigen',
    given: 'Der Kurs spielt {move}. Der Zug kommt vor dem Ende noch einmal.',
    on: 'Weiter',
    nextLine: 'Nächste Variante',
    finish: 'Zum Schluss',
    blank: 'Ihr Zug',

    ended: 'Das war es für jetzt',
    endedEarly: 'Sie haben aufgehört',
    answered: { one: 'Sie haben einen Zug beantwortet.', other: 'Sie haben {n} Züge beantwortet.' },
    answeredNone: 'Sie haben keinen Zug beantwortet.',
    atOnce: { one: 'Einen wussten Sie sofort.', other: '{n} wussten Sie sofort.' },
    slowly: {
      one: 'Einer hat lange gedauert oder einen Hinweis gebraucht.',
      other: '{n} haben lange gedauert oder einen Hinweis gebraucht.',
    },
    missed: {
      one: 'Einen wussten Sie nicht. Er kommt morgen wieder:',
      other: '{n} wussten Sie nicht. Sie kommen morgen wieder:',
    },
    seen: {
      one: 'Ein neuer Zug wurde gezeigt und noch nicht gefragt.',
      other: '{n} neue Züge wurden gezeigt und noch nicht gefragt.',
    },
    toOverview: 'Zurück zur Übersicht',
  },
};
