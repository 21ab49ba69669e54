import { dataOf } from '../../contract/attributes.ts';
import { readerSettings, type SettingName } from '../../contract/reader-settings.ts';
import { fill } from '../../contract/sentence.ts';
import type { SettingsWords } from '../../contract/words.ts';
import { element, make, makeButton } from '../element.ts';
import { keepSetting } from './keep-setting.ts';
import { writtenHere } from './notation.ts';

declare global {
  /** Set by the script `reader-words`. */
  var readerWords: SettingsWords | undefined;
}

let dialog: HTMLDialogElement | undefined;

/** Opens the form over the page; what is chosen holds at once. */
export async function openForm(): Promise<void> {
  const words = globalThis.readerWords;
  if (words === undefined) return;
  await loadStyle();
  showOver(settingsDialog(words));
}

/** Shows a dialog over the page, in the place of another. */
export function showOver(made: HTMLDialogElement): void {
  dialog?.remove();
  dialog = made;
  document.body.append(made);
  made.showModal();
}

let style: Promise<unknown> | undefined;

export function loadStyle(): Promise<unknown> {
  style ??= new Promise((resolve) => {
    const link = document.querySelector<HTMLElement>('[data-look]');
    const { look = '' } = link === null ? {} : dataOf('settings', link);
    const sheet = element('link', { rel: 'stylesheet', href: look });
    // Without it the form is plain, and there.
    for (const end of ['load', 'error']) sheet.addEventListener(end, resolve);
    document.head.append(sheet);
  });
  return style;
}

/** A dialog with its title, its content and the button that closes it. */
export function makeDialog(
  id: string,
  words: { readonly title: string; readonly close: string },
  ...content: readonly HTMLElement[]
): HTMLDialogElement {
  const title = element('h2', { id }, words.title);
  const made = element('dialog', { class: 'settings', 'aria-labelledby': id });
  const close = makeButton(words.close, () => made.close(), 'act');
  // A click beside it closes it, as Escape does.
  made.addEventListener('click', ({ target }) => target === made && made.close());
  made.append(make('div', 'settings-form', title, ...content, close));
  return made;
}

function settingsDialog(words: SettingsWords): HTMLDialogElement {
  return makeDialog(
    'reader-settings',
    words,
    choice('theme', words.theme, {
      own: words.theme.own,
      light: words.theme.light,
      dark: words.theme.dark,
    }),
    choice('notation', words.notation, notations(words)),
    choice('size', words.size, {
      small: words.size.small,
      own: words.size.own,
      large: words.size.large,
    }),
    choice('motion', words.motion, { own: words.motion.own, off: words.motion.off }),
    choice('sound', words.sound, { own: words.sound.own, on: words.sound.on }),
    make('p', 'settings-lead', words.lead),
  );
}

/** A move in each notation; a language whose letters are the English ones has one line for both. */
function notations({ notation, letters }: SettingsWords): Readonly<Record<string, string>> {
  const move = (knight: string) => ({ move: `${knight}f3` });
  return {
    letters: fill(notation.letters, move(letters.knight)),
    ...(letters.knight !== 'N' && { english: fill(notation.english, move('N')) }),
    figurines: fill(notation.figurines, move('♘')),
  };
}

/** `own` stands for no setting at all. */
function choice(
  name: SettingName,
  { title }: { readonly title: string },
  options: Readonly<Record<string, string>>,
): HTMLFieldSetElement {
  const chosen =
    document.documentElement.dataset[name] ?? (name === 'notation' ? writtenHere() : 'own');
  const values: readonly string[] = readerSettings[name];
  return element(
    'fieldset',
    { 'data-setting': name },
    element('legend', {}, title),
    ...Object.entries(options).map(([value, words]) => {
      const input = element('input', { type: 'radio', name: `setting-${name}`, value });
      input.checked = value === chosen;
      input.addEventListener('change', () =>
        keepSetting(name, values.includes(value) ? value : undefined),
      );
      return element('label', {}, input, ` ${words}`);
    }),
  );
}
