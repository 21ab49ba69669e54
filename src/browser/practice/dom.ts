/** An element with a class and what it holds. */
export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  ...content: readonly (string | Node)[]
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  if (className !== '') element.className = className;
  element.append(...content);
  return element;
}

export function makeButton(words: string, onClick: () => void): HTMLButtonElement {
  const button = make('button', '', words);
  button.type = 'button';
  button.addEventListener('click', onClick);
  return button;
}

/** Makes an element something that the page may put the focus on. */
export function focusable<Found extends HTMLElement>(element: Found): Found {
  element.tabIndex = -1;
  return element;
}
