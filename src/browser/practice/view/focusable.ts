/** Makes an element something that the page may put the focus on. */
export function focusable<Found extends HTMLElement>(element: Found): Found {
  element.tabIndex = -1;
  return element;
}
