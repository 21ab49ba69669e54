/** Remembers which part of a drawn element has the focus. @returns gives it back after it is drawn anew. */
export function focusIn(root: HTMLElement): () => void {
  const active = document.activeElement;
  const name =
    active instanceof HTMLElement && root.contains(active) ? active.dataset.keep : undefined;
  return () => {
    if (name === undefined) return;
    root
      .querySelector<HTMLElement>(`[data-keep="${CSS.escape(name)}"]`)
      ?.focus({ preventScroll: true });
  };
}
