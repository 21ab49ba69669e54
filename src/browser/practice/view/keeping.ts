import type { PracticeWords } from '../../../contract/words.ts';
import { make, makeButton } from '../../element.ts';

export interface KeepingEvents {
  readonly onSave: () => void;
  /** @returns what to tell the reader. */
  readonly onLoad: (file: File) => Promise<string>;
  /** @returns what to tell the reader. */
  readonly onForget: () => Promise<string>;
}

/** Where progress is saved to a file, read from one, and forgotten. */
export function makeKeeping(
  words: PracticeWords,
  { onSave, onLoad, onForget }: KeepingEvents,
): HTMLElement {
  const { practice } = words;
  const input = make('input', '');
  input.type = 'file';
  input.accept = '.json,application/json';
  input.hidden = true;
  const result = make('p', 'practice-result');
  result.setAttribute('role', 'status');
  const say = async (sentence: Promise<string>) => {
    // Else the same words would not be said twice.
    result.textContent = '';
    result.textContent = await sentence;
  };
  input.addEventListener('change', async () => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    await say(onLoad(file));
    // So that the same file can be chosen again.
    input.value = '';
  });
  const save = makeButton(practice.save, onSave);
  const load = makeButton(practice.load, () => input.click());
  const summary = make('summary', '', practice.forget);
  const forget = makeButton(practice.forgetNow, async () => {
    await say(onForget());
    question.open = false;
    summary.focus();
  });
  const question = make(
    'details',
    'practice-forget',
    summary,
    make('p', '', practice.forgetHelp),
    forget,
  );
  return make(
    'section',
    'practice-keeping',
    make('h2', '', practice.keeping),
    make('p', '', practice.keepingHelp),
    make('p', 'practice-onward', save, load),
    input,
    question,
    result,
  );
}
