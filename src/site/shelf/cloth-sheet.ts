import { createHash } from 'node:crypto';
import type { BuiltCourse } from '../../contract/index.ts';
import { type ColourName, defaultColour, type Mode } from '../../look/index.ts';
import type { SiteFile } from '../site-data.ts';

/** What a cover and the board on it are painted with. */
const onCover = [
  'cover',
  'on-cover',
  'on-cover-quiet',
  'board-light-square',
  'board-dark-square',
  'board-frame',
  'board-white-piece',
  'board-black-piece',
  'board-last-move',
] as const satisfies readonly ColourName[];

/** The colours of a cover that differ from those of the house. @param colourIn what the course's look has. */
export function clothOf(colourIn: (name: ColourName, mode: Mode) => string): BuiltCourse['cloth'] {
  const own = (mode: 'light' | 'dark') =>
    Object.fromEntries(
      onCover.flatMap((name) => {
        const colour = colourIn(name, mode);
        return colour === defaultColour(name, mode) ? [] : [[name, colour] as const];
      }),
    );
  return { light: own('light'), dark: own('dark') };
}

/**
 * The style sheet with the covers that have a look of their own, which no page may have in itself
 * (`security-policy.ts`); nothing where there is none. For screens: on paper no cover has a ground.
 */
export function clothSheet(built: readonly BuiltCourse[]): SiteFile | undefined {
  const rules = built.flatMap(({ cloth: { light, dark } }, index) => {
    const book = `.cloth-${index + 1}`;
    // What the one mode sets, the other must set too: else it would hold there.
    const names = [...new Set([...Object.keys(light), ...Object.keys(dark)])] as ColourName[];
    if (names.length === 0) return [];
    const values = (mode: 'light' | 'dark') =>
      names
        .map(
          (name) =>
            `--${name}:${(mode === 'light' ? light : dark)[name] ?? defaultColour(name, mode)}`,
        )
        .join(';');
    return [
      `${book}{${values('light')}}`,
      `@media(prefers-color-scheme:dark){:root:not([data-theme="light"]) ${book}{${values('dark')}}}`,
      `:root[data-theme="dark"] ${book}{${values('dark')}}`,
    ];
  });
  if (rules.length === 0) return undefined;
  const content = `@media screen{\n${rules.join('\n')}\n}\n`;
  const edition = createHash('sha256').update(content).digest('hex').slice(0, 12);
  return { path: `cloths.${edition}.css`, content };
}
