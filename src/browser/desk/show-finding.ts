/** Leads from the list, and from a sign in the text, to the note of a finding, with the focus. */
export function showFinding(): void {
  addEventListener('click', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const link = event.target instanceof Element ? event.target.closest('a[href^="#desk-"]') : null;
    const note = link && document.getElementById(link.getAttribute('href')?.slice(1) ?? '');
    if (!note) return;
    event.preventDefault();
    // Beside, not under, the board that lies above the text on a phone.
    note.scrollIntoView({ block: 'center' });
    note.focus({ preventScroll: true });
  });
}
