type Attributes = Readonly<Record<string, string>>;

export type Content = Node | string | readonly (Node | string)[];

/** A new element with its attributes and content. */
export function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  attributes: Attributes = {},
  ...content: readonly Content[]
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...content.flatMap(listOf));
  return made;
}

/** The same with a class and nothing else; an empty one is left out. */
export function make<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className: string,
  ...content: readonly Content[]
): HTMLElementTagNameMap[Name] {
  return element(name, className === '' ? {} : { class: className }, ...content);
}

export function makeButton(words: string, onClick: () => void, className = ''): HTMLButtonElement {
  const button = make('button', className, words);
  button.type = 'button';
  button.addEventListener('click', onClick);
  return button;
}

export function listOf(content: Content): readonly (Node | string)[] {
  return typeof content === 'string' || content instanceof Node ? [content] : content;
}
