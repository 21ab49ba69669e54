/** What the pages of a shelf of courses say; `talk` travels to the browser as data, gaps in braces. */
export const shelf = {
  courses: 'Courses',
  pages: 'Pages of all courses',
  /** From a course's pages to the shelf. */
  back: (title: string) => `All courses: ${title}`,
  notFoundLead: 'The address may be mistyped, or the page may have a new name.',
  toCourses: 'To all courses',
  practised: { one: '{n} move to practise', other: '{n} moves to practise' },
  news: 'What is new',
  newsIn: (course: string) => `in “${course}”`,
  feed: (title: string) => `${title}: what is new`,
  also: 'Across all courses',
  offlineLead:
    'These pages stay on your device once you have opened one of them, and so does each course that you open.',
  about: {
    'practice.html': 'All that is due today, from every course, in one session.',
    'search.html': 'Words, moves and positions in every course.',
    'compare.html':
      'See which course your own games follow furthest, and where they left it. They stay on your device.',
  },
  practiceLead:
    'All that is due today, from every course, in one session. What you answer counts in its own course, as if you had practised there.',
  searchLead: 'In every course at once.',
  compareLead:
    'After playing: see which course each of your games follows furthest, where it left, and what is advised there. Your games stay on this device; nothing is sent anywhere.',
  coursesInstead: 'Each course has a page of its own for this:',
  /** What its search says; it travels to the browser. */
  search: {
    inCourses: {
      one: 'Found in one course.',
      other: 'Found in {n} courses.',
    },
    nowhere: 'No course has it.',
    notLoaded: '“{course}” could not be loaded.',
  },
  /** What its practice says; it travels to the browser. */
  practice: {
    some: 'Only {n} of them',
    notBegun:
      'You have not practised any of these courses yet. Begin in one of them: what comes back is then asked here too.',
    byCourse: 'Course by course',
    byCourseHelp:
      'New moves are learnt in the practice of each course, where your progress can also be saved to a file.',
    unmet: 'not begun',
    twins: {
      one: 'One of them is asked by two courses with the same answer: it is asked once, and counts in both.',
      other:
        '{n} of them are asked by more than one course with the same answer: each is asked once, and counts in all.',
    },
  },
  /** What its comparison of games says; it travels to the browser. */
  compare: {
    none: 'In no course',
    never: 'This game enters none of the courses.',
    followed: { one: 'One game followed it furthest.', other: '{n} games followed it furthest.' },
  },
  talk: {
    goOn: 'Go on: {title}',
    due: { one: '{n} move due', other: '{n} moves due' },
    dueToday: { one: '{n} move is due today.', other: '{n} moves are due today.' },
    dueWithin: { one: 'All from one course.', other: 'From {n} courses.' },
    practise: 'Practise them now',
  },
};
