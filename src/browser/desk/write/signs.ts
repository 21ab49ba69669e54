import { drawnSigns } from '../../../contract/drawn-signs.ts';
import { glyphMeaning, glyphSign } from '../../../movetext/glyphs.ts';
import { element, make, makeButton } from '../../element.ts';

/** From `!` to `?!`, and the verdicts on a position, each by its number. */
const offered: readonly number[] = [1, 3, 5, 6, 2, 4, 10, 14, 16, 18, 15, 17, 19, 13];

/** Buttons for the signs behind a move; those that stand there are pressed. */
export function makeSigns(
  label: string,
  glyphs: readonly number[],
  onChoose: (nag: number) => void,
): HTMLElement {
  const group = element('div', { class: 'write-signs', role: 'group', 'aria-label': label });
  for (const nag of offered) {
    const sign = glyphSign(nag) ?? `$${nag}`;
    const button = makeButton(sign, () => onChoose(nag));
    const drawn = drawnSigns[sign];
    if (drawn !== undefined) button.replaceChildren(make('span', `drawn ${drawn}`, sign));
    const meaning = glyphMeaning(nag) ?? sign;
    button.title = meaning;
    button.setAttribute('aria-label', `${sign} ${meaning}`);
    button.setAttribute('aria-pressed', String(glyphs.includes(nag)));
    button.dataset.keep = `sign-${nag}`;
    group.append(button);
  }
  return group;
}
