/** Boards for other sites, and the page that shows an author how to include them. */
export const embed = {
  embed: {
    open: 'Open in the course',
    page: 'Boards for other sites',
    lead: 'Copy the text of a box into the source of your page.',
    /** Of a long course: the list of its chapters. */
    choose: 'Choose the chapter in which the position stands.',
    boards: { one: '{n} board', other: '{n} boards' },
    noSite:
      'Put the address of the published course in place of ADDRESS, or set “site” in course.yaml and build again.',
    frame: 'A frame with a board to step through',
    element: 'The same as a part of the page, with a script and without a frame',
    picture: 'A picture with a link, without any script',
    script: 'Once a page, before its boards:',
  },
};
