/** Folds and unfolds by click and key; the arrows also lead from line to line. */
export function listenForFolds(
  tree: HTMLElement,
  setFolded: (fold: HTMLButtonElement, folded: boolean) => void,
): void {
  const foldAt = (event: Event) =>
    event.target instanceof Element ? event.target.closest<HTMLButtonElement>('.tree-fold') : null;
  const isFolded = (fold: Element) => fold.getAttribute('aria-expanded') === 'false';

  tree.addEventListener('click', (event) => {
    const fold = foldAt(event);
    if (fold !== null) setFolded(fold, !isFolded(fold));
  });

  tree.addEventListener('keydown', (event) => {
    const fold = foldAt(event);
    if (fold === null || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const target = targetOf(event.key, fold);
    if (target === undefined) return;
    event.preventDefault();
    if (target === 'fold' || target === 'unfold') setFolded(fold, target === 'fold');
    else target?.focus();
  });

  function targetOf(key: string, fold: HTMLButtonElement) {
    switch (key) {
      case 'ArrowRight':
        return isFolded(fold) ? 'unfold' : beside(fold, 1);
      case 'ArrowLeft':
        return isFolded(fold) ? outer(fold) : 'fold';
      case 'ArrowDown':
        return beside(fold, 1);
      case 'ArrowUp':
        return beside(fold, -1);
      default:
        return undefined;
    }
  }

  function beside(fold: HTMLButtonElement, by: 1 | -1): HTMLButtonElement | null {
    const shown = [...tree.querySelectorAll<HTMLButtonElement>('.tree-fold')].filter(
      (each) => each.closest('[hidden]') === null,
    );
    return shown[shown.indexOf(fold) + by] ?? null;
  }

  function outer(fold: HTMLButtonElement): HTMLButtonElement | null {
    const list = fold.closest('li')?.parentElement;
    return (
      list?.parentElement?.querySelector<HTMLButtonElement>(':scope > div > .tree-fold') ?? null
    );
  }
}
