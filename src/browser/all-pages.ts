/** Closes the list of all pages where the reader turns to something else; it opens without script. */
export function closeAllPages(list: HTMLDetailsElement): void {
  addEventListener('click', ({ target }) => {
    if (target instanceof Node && !list.contains(target)) list.open = false;
  });
  addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || !list.open) return;
    list.open = false;
    list.querySelector('summary')?.focus();
  });
}
