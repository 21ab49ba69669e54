/** What the page of practice says. `practice` travels to the browser as data; gaps in braces. */
export const practice = {
  practicePage: 'Practice',
  practiceLead:
    'Find the moves of the course from memory. What you know is asked less and less often; what you miss comes back tomorrow.',
  practiceNeedsScript: 'Practice needs JavaScript, which is switched off in this browser.',

  practice: {
    title: 'Practice',
    untouched: {
      one: 'The course has one move for you to find. It is shown to you once, with what the author says of it; then you are asked for it.',
      other:
        'The course has {n} moves for you to find. Each is shown to you once, with what the author says of it; then you are asked for it.',
    },
    due: { one: 'One move comes back today.', other: '{n} moves come back today.' },
    nothingDue: 'Nothing comes back today.',
    changed: {
      one: 'For one of them the course has new advice.',
      other: 'For {n} of them the course has new advice.',
    },
    unmet: { one: 'You have yet to meet one move.', other: 'You have yet to meet {n} moves.' },
    allMet: 'You have met every move.',
    nothingHere: 'The course asks nothing here.',
    begin: { one: 'Begin, with one move', other: 'Begin, with {n} moves' },
    beginBack: { one: 'Only the one that comes back', other: 'Only the {n} that come back' },
    beginAhead: { one: 'Play it once more', other: 'Play {n} of them once more' },
    noneChosen: 'No chapter has a tick. Tick those that you want to practise.',
    about: 'Practice: {title}',
    wholeCourse: 'Practise the whole course',
    missedInGames: 'what your games missed',

    overview: 'Chapter by chapter',
    overviewHelp:
      'Moves of chapters without a tick are not asked. The name of a chapter begins a session of that chapter alone.',
    /** The name of a tick. */
    include: 'Ask moves of “{title}”',
    standing: { one: '{known} of one move known', other: '{known} of {n} moves known' },
    onTheWay: { one: 'one more met', other: '{n} more met' },
    seeToday: { one: 'one to see today', other: '{n} to see today' },
    lately: '{n} of {answers} missed in four weeks',
    before: '{n} of {answers} in the four before',
    whole: 'Whole course',
    wholeHelp: 'A move that stands in several chapters counts once.',

    forecast: 'What comes back, and when',
    tomorrow: 'Tomorrow',
    inSecondWeek: 'The week after',
    inFourWeeks: 'In two to four weeks',
    later: 'Later',
    moves: { one: 'one move', other: '{n} moves' },

    weeks: 'Your last weeks',
    thisWeek: 'These seven days',
    weekBefore: 'The seven before',
    weeksAgo: '{n} weeks ago',
    score: '{n} of {answers} missed',
    scoreNone: 'none of {answers} missed',
    noAnswers: 'not practised',
    often: 'Missed most often',
    oftenMissed: 'Missed {n} times in {answers} answers, last asked on {day}.',

    adopted: {
      one: 'You have practised one of these moves before, in this course under another name or in another course on this site. It is not asked as new.',
      other:
        'You have practised {n} of these moves before, in this course under another name or in another course on this site. They are not asked as new.',
    },
    resting: {
      one: 'One move that you learnt is not asked by this edition of the course. It rests, and comes back if the course asks it again.',
      other:
        '{n} moves that you learnt are not asked by this edition of the course. They rest, and come back if the course asks them again.',
    },

    keeping: 'Your progress',
    keepingHelp:
      'It is kept in this browser and sent nowhere. To take it to another browser, save it to a file and read the file there.',
    save: 'Save to a file',
    load: 'Read from a file',
    forget: 'Forget everything',
    forgetHelp:
      'All that you have learnt in this course is forgotten in this browser, and you begin anew. That cannot be undone. Your notes, your bookmarks and what you have read stay; so does a file that you have saved, which can be read again.',
    forgetNow: 'Forget it now',
    forgotten: 'Forgotten. You begin anew.',
    notForgotten: 'The browser does not let the page change what is kept. Nothing was forgotten.',
    taken: {
      one: 'Read: one move was taken from the file.',
      other: 'Read: {n} moves were taken from the file.',
    },
    takenExercises: {
      one: '{n} result of an exercise came along.',
      other: '{n} results of exercises came along.',
    },
    takenNotes: {
      one: 'A note came with it.',
      other: '{n} notes came with it.',
    },
    takenOther: {
      one: 'Read: the file belongs to another course, “{title}”. One of its moves is asked here too and was taken.',
      other:
        'Read: the file belongs to another course, “{title}”. {n} of its moves are asked here too and were taken.',
    },
    mended: {
      one: 'One of them had a date or a number that cannot be; it was put right.',
      other: '{n} of them had a date or a number that cannot be; they were put right.',
    },
    notTaken: 'Read: nothing in the file is later than what is kept here.',
    notProgress: 'This file holds no progress of a practice. Nothing was changed.',
    cutShort: 'This file is cut short. Nothing was changed. Save it once more where it comes from.',
    otherCourse: 'This file belongs to another course, “{title}”. Nothing was changed.',
    newer:
      'This file was saved by a later edition of this page. Nothing was changed. Load the page anew and try again.',
    unreadable: 'This file cannot be read. Nothing was changed.',
    denied:
      'This browser does not let the page keep anything. You can practise all the same; save your progress to a file before you leave.',
    full: 'The browser has no room left: what you answer is not kept. Save your progress to a file before you leave, or make room.',
    lost: 'The browser has closed what it keeps for this page. The page tries again, and then writes all that you have answered. Until this message goes, stay on the page, or save your progress to a file.',

    help: 'How this works',
    helpText: [
      'You play one side, the page plays the other with the moves that the course covers. Moves that are not asked today are played for you on the way.',
      'There are no marks to give. A move that you find at once is asked again after some days, then weeks, then months. If it took you long, or a hint, it comes sooner. If your first try was wrong, or you asked to be shown, it comes once more in the same session and again tomorrow.',
      'A session has twelve moves at most: what comes back today, and up to eight that you have not met, those first on which most of the course hangs.',
      'A good move that the course only mentions is not a mistake: you are asked once more. “Known” is what will be asked in a week or later. A day begins at four in the morning.',
      'Make your moves on the board by dragging or with two taps, walk over the squares with the arrow keys and choose with Enter, or type them.',
    ],

    session: 'This session',
    count: 'Move {n} of {all}.',
    countAgain: 'Move {n} of {all}, once more.',
    comeBack: { one: 'One comes back.', other: '{n} come back.' },
    marks: {
      here: '{n}: asked now',
      right: '{n}: right',
      wrong: '{n}: missed',
      due: '{n}: comes back',
      rest: '{n}: to come',
    },
    stop: 'Stop here',
    /** Within a sentence. */
    sides: { white: 'White', black: 'Black' },
    question: 'What does {side} play?',
    played: '{side} plays {move}.',
    newMove: 'Here {side} plays {move}.',
    newMoveHelp: 'You have not met it yet. Make the move on the board.',
    changedMove: 'Now {side} plays {move}.',
    changedMoveHelp: 'The course has new advice here. Make the move on the board.',
    notShown: 'Here the course plays {move}. Play that.',
    shown: 'Good. You will be asked for it in a while.',
    right: 'Right: {move}',
    wasRight: '{move} is right.',
    tryAgain: 'Not that one. Try again.',
    alsoGood: 'Good too. Which one does the course advise?',
    option: '{move} is a good move, and the course mentions it.',
    bad: '{move} is a mistake, says the course.',
    other: '{move} can be played, but it is not the move of the course.',
    entry: 'Move a piece on the board, or write the move',
    entryExample: 'for example {move}',
    hint: 'A hint',
    hinted: 'It is a move of the {piece} on {square}.',
    show: 'Show me',
    given: 'The course plays {move}',
    givenHelp: 'It comes again before the end.',
    on: 'Go on',
    nextLine: 'Next line',
    finish: 'See how it went',

    fromMemory: {
      one: 'Not from memory, this time.',
      other: '{right} of {n} from memory.',
    },
    allFromMemory: { one: 'Found from memory.', other: 'All {n} from memory.' },
    answeredNone: 'You have stopped before the first answer.',
    lookAgain: { one: 'One to look at again', other: '{n} to look at again' },
    youPlayed: 'You played {move}.',
    youWereShown: 'You asked to be shown.',
    tomorrowAgain: 'It comes back tomorrow.',
    readThere: 'Read the place',
    seen: {
      one: 'One new move was shown and not asked yet.',
      other: '{n} new moves were shown and not asked yet.',
    },
    again: { one: 'Once more, this one', other: 'Once more, these {n}' },
    more: { one: 'Go on, with one more', other: 'Go on, with {n} more' },
    toExercises: { one: 'Then one exercise', other: 'Then {n} exercises' },
    exercise: 'An exercise',
    nextExercise: 'Another exercise',
    back: 'Back to the overview',
  },
};
