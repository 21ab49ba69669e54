/** Lets the page put the focus on an element. */
export function focusable<Found extends HTMLElement>(element: Found): Found {
  element.tabIndex = -1;
  return element;
}
