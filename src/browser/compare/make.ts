/** What an element may hold. */
export type Content = Node | string | readonly (Node | string)[];

/** Makes an element with a class and content. */
export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  content: Content = [],
): HTMLElementTagNameMap[Name] {
  const element = document.createElement(name);
  if (className !== '') element.className = className;
  element.append(...listOf(content));
  return element;
}

export function makeButton(words: string, onClick: () => void, className = ''): HTMLButtonElement {
  const button = make('button', className, words);
  button.type = 'button';
  button.addEventListener('click', onClick);
  return button;
}

/** A sentence whose gaps are filled with text or elements: `The course advises {advice}.` */
export function compose(
  sentence: string,
  parts: Readonly<Record<string, Content>>,
): (Node | string)[] {
  return sentence.split(/\{(\w+)\}/).flatMap((piece, index): (Node | string)[] => {
    const part = index % 2 === 0 ? piece : (parts[piece] ?? '');
    return [...listOf(part)].filter((each) => each !== '');
  });
}

function listOf(content: Content): readonly (Node | string)[] {
  return typeof content === 'string' || content instanceof Node ? [content] : content;
}
