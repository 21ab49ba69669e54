/** What a page tells the worker of a new edition when its reader asks for that edition. */
export const takeOver = 'take over';
