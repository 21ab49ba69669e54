/** What the page of practice says. `practice` travels to the browser as data; gaps in braces. */
export const practice = {
  practicePage: 'Practice',
  practiceLead:
    'Play the moves of the course from memory. What you know is asked less and less often; what you miss comes back tomorrow.',
  practiceNeedsScript: 'Practice needs JavaScript, which is switched off in this browser.',

  practice: {
    moves: { one: 'one move', other: '{n} moves' },
    untouched:
      'You have not begun yet. The course advises {moves}. Each is shown to you once, with what the author says of it; then you are asked for it.',
    due: { one: 'One move is due today.', other: '{n} moves are due today.' },
    nothingDue: 'Nothing is due today.',
    changed: {
      one: 'For one of them the course has new advice.',
      other: 'For {n} of them the course has new advice.',
    },
    fresh: { one: 'One move is still new to you.', other: '{n} moves are still new to you.' },
    allSeen: 'You have seen every move of these chapters.',
    ahead: 'Due tomorrow: {tomorrow}; within a week: {week}.',
    beginDue: { one: 'Play the move that is due', other: 'Play the {n} moves that are due' },
    beginNew: { one: 'Learn one new move', other: 'Learn {n} new moves' },
    noneChosen: 'No chapter has a tick. Tick those that you want to practise.',

    overview: 'What you know',
    overviewHelp: 'Only chapters with a tick are practised.',
    chapter: 'Chapter',
    known: 'Known',
    learning: 'Learning',
    unseen: 'New',
    dueNow: 'Due',
    whole: 'Whole course',
    wholeHelp: 'A move that stands in several chapters counts once.',
    adopted: {
      one: 'You have practised one of these moves before, in this course under another name or in another course on this site. It is not asked as new.',
      other:
        'You have practised {n} of these moves before, in this course under another name or in another course on this site. They are not asked as new.',
    },
    resting: {
      one: 'One move that you learnt is not in this edition of the course. It rests, and comes back if the course brings it back.',
      other:
        '{n} moves that you learnt are not in this edition of the course. They rest, and come back if the course brings them back.',
    },

    keeping: 'Your progress',
    keepingHelp:
      'It is kept in this browser and sent nowhere. To take it to another browser, save it to a file and read the file there.',
    save: 'Save to a file',
    load: 'Read from a file',
    forget: 'Forget everything',
    forgetHelp:
      'All that you have learnt in this course is forgotten in this browser, and you begin anew. That cannot be undone. A file that you have saved stays, and can be read again.',
    forgetNow: 'Forget it now',
    forgotten: 'Forgotten. You begin anew.',
    notForgotten: 'The browser does not let the page change what is kept. Nothing was forgotten.',
    taken: {
      one: 'Read: one move was taken from the file.',
      other: 'Read: {n} moves were taken from the file.',
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
      'You play one side, the page plays the other with the moves that the course covers. Moves that are not due are played for you on the way.',
      'There are no marks to give. A move that you find at once is asked again after some days, then weeks, then months. If it took you long, or a hint, it comes sooner. If your first try was wrong, or you had the move shown, it comes once more in the same session and again tomorrow.',
      'A good move that the course only mentions is not a mistake: you are asked once more. “Known” is what will be asked in a week or later. A day begins at four in the morning.',
      'Make your moves on the board by dragging or with two taps, walk over the squares with the arrow keys and choose with Enter, or type them.',
    ],

    session: 'The line',
    left: { one: 'One move left', other: '{n} moves left' },
    stop: 'Stop here',
    yourMove: 'Your move.',
    played: '{side} plays {move}.',
    newMove: 'New to you: the course plays {move}. Play it on the board.',
    changedMove: 'New advice: here the course now plays {move}. Play it on the board.',
    notShown: 'Here the course plays {move}. Play that.',
    shown: 'Good. You will be asked for it in a while.',
    right: '{move} is right.',
    option: '{move} is good too, and the course mentions it. It advises another move: which?',
    bad: '{move} is a mistake. Try again.',
    other: '{move} can be played, but the course does something else here. Try again.',
    hint: 'Hint',
    hinted: 'It is a move of the {piece} on {square}.',
    show: 'Show the move',
    given: 'The course plays {move}. It comes again before the end.',
    on: 'On',
    nextLine: 'Next line',
    finish: 'To the end',
    blank: 'your move',

    ended: 'That is all for now',
    endedEarly: 'You have stopped',
    answered: { one: 'You answered one move.', other: 'You answered {n} moves.' },
    answeredNone: 'You answered no move.',
    atOnce: { one: 'One you knew at once.', other: '{n} you knew at once.' },
    slowly: {
      one: 'One took you long, or a hint.',
      other: '{n} took you long, or a hint.',
    },
    missed: {
      one: 'One you did not know. It comes again tomorrow:',
      other: '{n} you did not know. They come again tomorrow:',
    },
    seen: {
      one: 'One new move was shown and not asked yet.',
      other: '{n} new moves were shown and not asked yet.',
    },
    toOverview: 'Back to the overview',
  },
};
