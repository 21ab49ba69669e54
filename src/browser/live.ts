/**
 * Only in `linewright dev`, never in a published site: reloads the page when the course has been
 * published anew, and shows the findings on it.
 */
interface LiveState {
  readonly version: number;
  readonly findings: string;
}

const script = document.currentScript as HTMLScriptElement;
const events = new EventSource(new URL('events', script.src));
const shown = Number(script.dataset.version);

events.addEventListener('message', ({ data }: MessageEvent<string>) => {
  const state = JSON.parse(data) as LiveState;
  // Compared with what the page was made of: it may have changed before the page heard of it.
  if (state.version !== shown) location.reload();
  showFindings(state.findings);
});

function showFindings(text: string): void {
  document.querySelector('[data-findings]')?.remove();
  if (text === '') return;
  const panel = document.createElement('pre');
  panel.dataset.findings = '';
  panel.setAttribute('role', 'status');
  panel.tabIndex = 0;
  panel.textContent = text;
  // Property by property: the page's content security policy allows no style attribute.
  Object.assign(panel.style, {
    position: 'fixed',
    insetInline: '0',
    bottom: '0',
    zIndex: '100',
    margin: '0',
    padding: '1rem 1.25rem',
    maxHeight: '45vh',
    overflow: 'auto',
    font: '0.875rem/1.45 ui-monospace, monospace',
    whiteSpace: 'pre',
    color: '#111',
    background: '#fffdf5',
    borderTop: '3px double #111',
  });
  document.body.append(panel);
}
