/**
 * The one script inside a page, run before its text is parsed. To a reader who comes anew to the top
 * of a chapter, only what is near the window is laid out at first (`styles/moves.css`), the rest when
 * the page is idle or at his first act (`browser/piecemeal.ts`): so a phone shows the first lines
 * early and can answer the hand. Who comes to a place in the text, or back to where he was, needs
 * all of it at once: the browser goes there by its height.
 */
export const piecemealScript =
  "location.hash===''&&performance.getEntriesByType('navigation')[0]?.type==='navigate'&&" +
  "document.documentElement.classList.add('piecemeal')";
