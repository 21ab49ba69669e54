import { boardCss } from '../../draw/board-css.ts';

/**
 * The style of a board on a page that is not ours: it stands in the shadow of the element, takes
 * nothing from the page, not even the size of its letters, and paints its own paper, since it cannot know what is behind it.
 */
export const embedCss = `${boardCss('host')}
:host { all: initial; display: block; max-width: 560px; }
:host([hidden]) { display: none; }
:host([fit]) { max-width: none; height: 100vh; }
.card { all: initial; display: flex; flex-direction: column; align-items: center; box-sizing: border-box;
  width: 100%; padding: 0.4em; background: var(--paper); color: var(--ink);
  font: 16px/1.3 "Source Serif 4", Charter, Georgia, "Noto Serif", serif; }
:host([fit]) .card { height: 100%; justify-content: center; }
course-board-drawing { display: block; width: 100%; }
/* A frame that is wider than high shows the whole board, with its lines below. */
:host([fit]) course-board-drawing { max-width: calc(100vh - 5.5em); min-width: 7em; }
.board-line { display: flex; align-items: center; gap: 0.5em; margin: 0; min-height: 2.4em; }
.board-caption { flex: 1; color: inherit; text-decoration: none; font-weight: 600; }
.board-controls { display: flex; }
button { all: unset; box-sizing: border-box; min-width: 2.4em; min-height: 2.4em; text-align: center;
  font-size: 1.2em; line-height: 1; cursor: pointer; }
button[aria-disabled="true"] { opacity: 0.35; cursor: default; }
button:focus-visible, a:focus-visible { outline: 2px solid currentcolor; outline-offset: 1px; }
.foot { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1em; width: 100%; margin: 0;
  font-size: 0.9em; }
:host([fit]) .foot { max-width: max(7em, calc(100vh - 5.5em)); }
.foot a { color: inherit; text-underline-offset: 0.15em; }
.unseen { position: absolute; width: 1px; height: 1px; margin: 0; overflow: hidden; clip-path: inset(50%); }
@media print { .board-controls { display: none; } }
`;
