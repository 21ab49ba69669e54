/** What a page says when the course has been published anew while it was being read. */
export const edition = {
  isThere: 'A new edition of this course is there.',
  load: 'Load it',
};
