type SetFolded = (fold: HTMLButtonElement, folded: boolean) => void;

/** Folds and unfolds by click and key; the arrows also lead from line to line and from move to move. */
export function listenForFolds(tree: HTMLElement, setFolded: SetFolded): void {
  tree.addEventListener('click', (event) => {
    const fold = closest(event, '.tree-fold');
    if (fold !== undefined) setFolded(fold, !isFolded(fold));
  });
  tree.addEventListener('keydown', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const fold = closest(event, '.tree-fold');
    const move = closest(event, '.course-move');
    const act =
      fold !== undefined
        ? actOfFold(event.key, fold, tree, setFolded)
        : move !== undefined
          ? actOfMove(event.key, move, tree, setFolded)
          : undefined;
    if (act === undefined) return;
    event.preventDefault();
    act();
  });
}

type Act = (() => void) | undefined;

function actOfFold(
  key: string,
  fold: HTMLButtonElement,
  tree: HTMLElement,
  setFolded: SetFolded,
): Act {
  const beside = (by: 1 | -1) => () => besideIn(tree, '.tree-fold', fold, by)?.focus();
  switch (key) {
    case 'ArrowRight':
      return isFolded(fold) ? () => setFolded(fold, false) : beside(1);
    case 'ArrowLeft':
      return isFolded(fold)
        ? () => outer(fold, '.tree-fold')?.focus()
        : () => setFolded(fold, true);
    case 'ArrowDown':
      return beside(1);
    case 'ArrowUp':
      return beside(-1);
    default:
      return undefined;
  }
}

function actOfMove(
  key: string,
  move: HTMLButtonElement,
  tree: HTMLElement,
  setFolded: SetFolded,
): Act {
  const line = [...(move.parentElement?.querySelectorAll<HTMLButtonElement>('.course-move') ?? [])];
  const at = line.indexOf(move);
  const firsts = (by: 1 | -1) => () =>
    besideIn(tree, '.tree-text > .course-move:first-child', line[0] ?? move, by)?.focus();
  switch (key) {
    case 'ArrowRight':
      return () => (line[at + 1] ?? inner(move, setFolded))?.focus();
    case 'ArrowLeft':
      return () => (line[at - 1] ?? outer(move, '.course-move:last-of-type'))?.focus();
    case 'ArrowDown':
      return firsts(1);
    case 'ArrowUp':
      return firsts(-1);
    default:
      return undefined;
  }
}

/** The first move that a line goes on with, unfolded. */
function inner(move: HTMLButtonElement, setFolded: SetFolded): HTMLButtonElement | undefined {
  const item = move.closest('li');
  const fold = item?.querySelector<HTMLButtonElement>(':scope > .tree-line > .tree-fold');
  if (!fold) return undefined;
  setFolded(fold, false);
  return item?.querySelector<HTMLButtonElement>(':scope > ul .course-move') ?? undefined;
}

/** The button of the line that this one is behind. */
function outer(button: HTMLButtonElement, selector: string): HTMLButtonElement | undefined {
  const line = button.closest('li')?.parentElement?.parentElement;
  const found = line?.querySelectorAll<HTMLButtonElement>(`:scope > .tree-line ${selector}`);
  return found?.[0];
}

function besideIn(
  tree: HTMLElement,
  selector: string,
  button: HTMLButtonElement,
  by: 1 | -1,
): HTMLButtonElement | undefined {
  const shown = [...tree.querySelectorAll<HTMLButtonElement>(selector)].filter(
    (each) => each.closest('[hidden]') === null,
  );
  return shown[shown.indexOf(button) + by];
}

function closest({ target }: Event, selector: string): HTMLButtonElement | undefined {
  const found = target instanceof Element ? target.closest<HTMLButtonElement>(selector) : null;
  return found ?? undefined;
}

function isFolded(fold: Element): boolean {
  return fold.getAttribute('aria-expanded') === 'false';
}
