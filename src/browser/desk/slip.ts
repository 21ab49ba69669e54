import type { DeskFinding, DeskState } from '../../contract/desk.ts';
import { make } from '../element.ts';
import { keptText } from '../kept-text.ts';
import { openButton } from './open-place.ts';
import { siteRoot } from './own-data.ts';

/** A list longer than this would be slower to draw than to mend. */
const mostListed = 300;
const openKey = 'desk-slip';

/** The list of findings: a slip at the edge of every page of `dev`. */
export interface Slip {
  show(state: DeskState): void;
  /** A line above the findings, until the next state. */
  say(words: string): void;
}

/** Makes the slip. It is a landmark; what changes in it is told politely, in a few words. */
export function makeSlip(): Slip {
  const slip = make('aside', 'desk-slip');
  slip.setAttribute('aria-label', 'Findings');
  slip.lang = 'en';
  slip.dir = 'ltr';
  const tab = make('button', 'desk-tab');
  tab.type = 'button';
  const sheet = make('div', 'desk-sheet');
  sheet.id = 'desk-sheet';
  tab.setAttribute('aria-controls', sheet.id);
  const notice = make('p', 'desk-notice');
  const list = make('div', 'desk-list');
  sheet.append(notice, list);
  const voice = make('p', 'unseen');
  voice.setAttribute('role', 'status');
  slip.append(tab, sheet);
  slip.hidden = true;
  document.body.append(slip, voice);

  const isOpen = () => tab.getAttribute('aria-expanded') === 'true';
  const unfold = (wanted: boolean) => {
    tab.setAttribute('aria-expanded', String(wanted));
    sheet.hidden = !wanted;
  };
  const open = (wanted: boolean) => {
    unfold(wanted);
    try {
      sessionStorage.setItem(openKey, wanted ? 'open' : 'shut');
    } catch {
      // It is shut again on the next page.
    }
  };
  unfold(keptText(openKey, () => sessionStorage) === 'open');
  tab.addEventListener('click', () => open(!isOpen()));
  slip.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || !isOpen()) return;
    event.stopPropagation();
    open(false);
    tab.focus();
  });
  list.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest('a') : null;
    // On a phone the sheet lies over the text.
    if (link !== null && innerWidth < 820) open(false);
  });

  let told: string | undefined;
  const tell = (words: string) => {
    // The first state is that of the page as it came.
    if (told !== undefined && told !== words) voice.textContent = words;
    told = words;
  };
  const showNotice = (words: string) => {
    notice.textContent = words;
    notice.hidden = words === '';
    slip.hidden = words === '' && list.childElementCount === 0;
  };
  return {
    show({ findings, trouble }) {
      const count = countInWords(findings);
      tab.replaceChildren(...tabContent(findings, count));
      list.replaceChildren(...listOf(findings));
      showNotice(trouble ?? '');
      // Nothing else on the page says what is to be done.
      if (document.body.classList.contains('desk-trouble')) unfold(true);
      tell(trouble ?? (count === '' ? 'Nothing is left to mend.' : `${count}.`));
    },
    say(words) {
      showNotice(words);
      voice.textContent = words;
    },
  };
}

function countInWords(findings: readonly DeskFinding[]): string {
  const count = (wanted: DeskFinding['severity']) =>
    findings.filter(({ severity }) => severity === wanted).length;
  return [
    [count('error'), 'error'],
    [count('warning'), 'warning'],
  ]
    .flatMap(([number, word]) =>
      number === 0 ? [] : [`${number} ${word}${number === 1 ? '' : 's'}`],
    )
    .join(', ');
}

function tabContent(findings: readonly DeskFinding[], count: string): HTMLElement[] {
  const worst = findings.some(({ severity }) => severity === 'error') ? 'error' : 'warning';
  const shape = make('span', `desk-shape desk-${worst}`);
  shape.setAttribute('aria-hidden', 'true');
  return [shape, make('span', '', count === '' ? 'A word from the desk' : count)];
}

/** Those of this page first, then file by file. */
function listOf(findings: readonly DeskFinding[]): HTMLElement[] {
  const here = pageOf(location.pathname);
  const files = new Map<string, DeskFinding[]>();
  for (const finding of findings.slice(0, mostListed)) {
    const known = files.get(finding.file);
    if (known) known.push(finding);
    else files.set(finding.file, [finding]);
  }
  const isHere = ([, [first]]: readonly [string, readonly DeskFinding[]]) => first?.page === here;
  const groups = [...files].sort((one, other) => Number(isHere(other)) - Number(isHere(one)));
  const left = findings.length - mostListed;
  return [
    ...groups.flatMap((group) => {
      const [file, found] = group;
      const title = make('h2', 'desk-file', isHere(group) ? `On this page · ${file}` : file);
      const list = make('ol', '');
      list.setAttribute('role', 'list');
      list.append(...found.map((finding) => entryOf(finding, here)));
      return [title, list];
    }),
    ...(left > 0 ? [make('p', 'desk-left', `${left} more stand in the terminal.`)] : []),
  ];
}

function entryOf(finding: DeskFinding, here: string): HTMLElement {
  const { id, severity, message, hint, page, rule, file, line, column } = finding;
  const entry = make('li', `desk-entry desk-${severity}`);
  const shape = make('span', `desk-shape desk-${severity}`);
  shape.setAttribute('role', 'img');
  shape.setAttribute('aria-label', severity === 'error' ? 'Error' : 'Warning');
  const words = make(page === undefined ? 'span' : 'a', 'desk-message', ...withCode(message));
  if (page !== undefined)
    words.setAttribute('href', page === here ? `#${id}` : `${siteRoot}${page}#${id}`);
  entry.append(shape, words);
  // Where there is a page, the hint stands beside the place.
  if (page === undefined && hint !== undefined)
    entry.append(make('span', 'desk-hint', ...withCode(hint)));
  const place = make('span', 'desk-place', `line ${line} · `);
  place.append(make('code', '', rule), ' ', openButton({ file, line, column }));
  entry.append(place);
  return entry;
}

/** Words between backquotes as code. */
function withCode(words: string): (Node | string)[] {
  return words.split('`').map((part, index) => (index % 2 === 1 ? make('code', '', part) : part));
}

function pageOf(path: string): string {
  const name = decodeURIComponent(path.slice(siteRoot.length));
  return name === '' ? 'index.html' : name;
}
