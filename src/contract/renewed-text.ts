/**
 * The event of the window that tells a page's scripts that its text has been changed in place, as the preview of
 * `dev` does. What acts on the text looks at it again; what is the reader's stays.
 */
export const textRenewed = 'course-text-renewed';
