import { describe, expect, test } from 'vitest';
import { hex } from 'wcag-contrast';
import { contrast } from './contrast.ts';
import { colourNames, defaultColour, modes } from './defaults.ts';
import { faultOf, findLowContrasts } from './find-contrast.ts';
import { pairs } from './pairs.ts';
import { readTheme } from './read-theme.ts';
import { firstFontFiles, hostedThemeCss, themeCss } from './theme-css.ts';

const files = {
  media: new Set(['media/a.woff2', 'media/b.otf', 'media/none.woff2', 'media/photo.png']),
  unfit: new Map([
    ['media/none.woff2', { message: 'none.woff2 is none.', hint: 'Save it again.' }],
  ]),
};
const read = (text: string) => readTheme({ path: 'theme.css', text }, files);
const told = (text: string) =>
  read(text).problems.map(
    ({ place: { start }, message }) => `${start.line}:${start.column} ${message}`,
  );
const cssOf = (text: string) => themeCss(read(text).look, (file) => `x/${file}`);

describe('contrast', () => {
  // WCAG 2.2, "contrast ratio": from 1 to 21; the greys are those of Understanding 1.4.3 (#767676 is the lightest at 4.5).
  test.each([
    ['#000000', '#ffffff', 21],
    ['#777777', '#777777', 1],
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.47],
  ])('%s on %s', (one, other, ratio) => expect(contrast(one, other)).toBeCloseTo(ratio, 1));

  test('is as another library counts it, whichever comes first', () => {
    for (const one of colourNames) {
      for (const other of colourNames) {
        const [a, b] = [defaultColour(one, 'light'), defaultColour(other, 'dark')];
        expect(contrast(a, b)).toBeCloseTo(hex(a, b), 1);
        expect(contrast(b, a)).toBe(contrast(a, b));
      }
    }
  });

  test.each(modes)('ours is enough for every pair, in the mode %s', (mode) => {
    const own = pairs.filter((pair) => pair.modes.includes(mode));
    expect(own.length).toBeGreaterThan(10);
    expect(
      own.flatMap(
        (pair) => faultOf(pair, mode, (name) => defaultColour(name, mode))?.message ?? [],
      ),
    ).toEqual([]);
  });

  test('is counted where a theme has a part in a pair, by mode and by part', () => {
    const found = findLowContrasts(
      read(`:root { --ink: #777 }
@media print { :root { --quiet: #aaa } }
::part(title) { color: var(--rule) }
::part(cover-title) { color: #000 }`),
    );
    expect(
      found.map(({ place, message }) => `${place.start.line} ${message.split(' (')[0]}`),
    ).toEqual([
      '1 Text is hard to read on light screens: `--ink`',
      '1 Text beside the board is hard to read on light screens: `--ink`',
      '1 The paler text of variations is hard to read on light screens: `--ink`',
      '2 Quiet text is hard to read on paper: `--quiet`',
      ...['light', 'dark'].map(
        (mode) =>
          `3 The part \`title\` is hard to read on ${mode} screens: ${mode === 'light' ? '#d8d1c2 on #fbf8f1' : '#3f3b34 on #191815'} has a contrast of ${mode === 'light' ? '1.43' : '1.59'} : 1, and WCAG 2.2 asks for 4.5 : 1`,
      ),
      ...['light', 'dark'].map(
        (mode) =>
          `4 The part \`cover-title\` is hard to read on ${mode} screens: ${mode === 'light' ? '#000000 on #74211b' : '#000000 on #4c1713'} has a contrast of ${mode === 'light' ? '1.97' : '1.43'} : 1, and WCAG 2.2 asks for 4.5 : 1`,
      ),
    ]);
  });
});

describe('what is no theme is told, each thing once, and the rest is read', () => {
  test.each([
    ['words', 'Our colours are green and gold.', ['1:32 This is no CSS from here on']],
    ['a slip', ':root { --inc: red; --measure: 30rem }', ['1:9 A theme has no property `--inc`.']],
    ['a wrong kind', ':root { --ink: 12px }', ['1:16 `12px` is no colour.']],
    ['transparency', ':root { --ink: #0008 }', ['1:16 `#0008` lets through']],
    ['an unknown reference', ':root { --ink: var(--inky) }', ['1:16 There is no colour `--inky`.']],
    [
      'a face that is nearly one of its own',
      '@font-face { font-family: "Alegreya"; src: url("media/a.woff2") } :root { --text-face: "Alegrya", serif; --title-face: "Alegrya", Alegreya }',
      ['1:75 `--text-face` names “Alegrya”, which no'],
    ],
    [
      'a circle',
      ':root { --ink: var(--quiet); --quiet: var(--ink) }',
      ['1:9 `--ink` is said by itself', '1:30 `--quiet` is said by itself'],
    ],
    [
      'no use on paper',
      '@media print { :root { --cover: red } }',
      ['1:24 `--cover` has no use on paper'],
    ],
    [
      'another query',
      '@media (hover: hover) { :root { --ink: red } }',
      ['1:1 A theme does not ask for'],
    ],
    ['@import', '@import "a.css";', ['1:1 A theme is one file']],
    ['another rule at @', '@layer a { }', ['1:1 A theme has no `@layer`.']],
    [
      'a url in a property',
      ':root { --text-face: url(a.woff2) }',
      ['1:22 A property holds no address'],
    ],
    [
      'a face of another site',
      '@font-face { font-family: A; src: url(//x.example/a.woff2) }',
      ['1:35 `//x.example/a.woff2` would be fetched'],
    ],
    [
      'a face that is none',
      '@font-face { font-family: A; src: url(media/none.woff2) }',
      ['1:35 none.woff2 is none.'],
    ],
    [
      'a face that is a picture',
      '@font-face { font-family: A; src: url(media/photo.png) }',
      ['1:35 `media/photo.png` is no file of a type face.'],
    ],
    [
      'a face that is missing',
      '@font-face { font-family: A; src: url(media/a.woff) }',
      ['1:35 There is no file'],
    ],
    [
      'a face outside',
      '@font-face { font-family: A; src: url(../a.woff2) }',
      ['1:35 `../a.woff2` lies outside'],
    ],
    [
      'a face without a file',
      '@font-face { font-family: A }',
      ['1:1 This `@font-face` names no file.'],
    ],
    [
      'an unknown part',
      '::part(cover-titel) { color: red }',
      ['1:1 There is no part `cover-titel`.'],
    ],
    ['what hides', '::part(title) { display: none }', ['1:17 A theme may not set `display`']],
    [
      'what fetches',
      '::part(title) { background: url(https://x.example/a.png) }',
      ['1:29 `https://x.example/a.png` would be fetched'],
    ],
    [
      'what is too large',
      '::part(title) { font-size: 400px }',
      ['1:28 `400px` is out of the bounds of `font-size`'],
    ],
    [
      'a negative margin',
      '::part(title) { margin-top: -9rem }',
      ['1:29 `-9rem` is out of the bounds'],
    ],
    [
      'text that is seen through',
      '::part(title) { color: transparent }',
      ['1:24 `transparent` lets through'],
    ],
    [
      'no value of CSS',
      '::part(title) { text-transform: loud }',
      ['1:33 `loud` is no value of `text-transform`'],
    ],
  ])('%s', (_name, text, expected) => {
    const found = told(text);
    expect(found).toHaveLength(expected.length);
    for (const [index, begin] of expected.entries()) expect(found[index]).toContain(begin);
  });

  test('what is sound beside it holds', () => {
    expect(read(':root { --inc: red; --measure: 30rem }').look.measures.screen.measure).toBe(
      '30rem',
    );
  });
});

describe('the style sheet of a theme', () => {
  test('says each property in every mode; a cover is the same in the dark', () => {
    const css = cssOf(':root { --cover: navy; --accent: #1d4f91; --text-size: 18px }');
    expect(css.match(/--cover: [^;]+/g)).toEqual([
      '--cover: #000080',
      '--cover: #000080',
      '--cover: #000080',
      '--cover: #ffffff',
    ]);
    expect(css.match(/--accent: [^;]+/g)).toEqual([
      '--accent: #1d4f91',
      '--accent: #ec947f',
      '--accent: #ec947f',
      '--accent: #000000',
    ]);
    expect(css).toContain('--text-size: 10pt');
  });

  test('brings faces in from the course, and asks for the first one at once', () => {
    const text = `@font-face { font-family: Club; src: url("./media/a.woff2") format("woff2"), url(media/b.otf); unicode-range: U+0-FF }
:root { --text-face: Club; --title-face: "Club", sans-serif }`;
    expect(told(text)).toEqual([]);
    const css = cssOf(text);
    expect(css).toContain(
      'src:url("x/media/a.woff2") format("woff2"),url("x/media/b.otf") format("opentype")',
    );
    expect(css).toContain('font-display:swap');
    expect(css).toContain('--text-face: "Club", Georgia');
    expect(css).toContain('@top-left{font-family:"Club", Georgia');
    expect(css).toContain('--title-face: "Club", sans-serif, "STIX Two Math"');
    expect(firstFontFiles(read(text).look)).toEqual(['media/a.woff2']);
  });

  test('colours of parts stay on screens, and the reader’s own choice of the dark counts', () => {
    const css = cssOf(`::part(heading) { color: var(--accent); letter-spacing: 0.02em }
@media (prefers-color-scheme: dark) { ::part(heading)::before { content: "§"; color: #fff } }`);
    expect(css).toContain('@media screen{:is(main :is(h2, h3, h4)):not(#_){color:var(--accent)}}');
    expect(css).toContain(':is(main :is(h2, h3, h4)):not(#_){letter-spacing:0.02em}');
    expect(css).toContain(
      ':root[data-theme="dark"] :is(main :is(h2, h3, h4)):not(#_)::before{content:"§";color:#fff}',
    );
  });
});

test('in the layout of another site nothing of a look holds outside of the course', () => {
  const { look } = read(
    ':root{--paper:#fff;--ink:#111}@media (prefers-color-scheme:dark){:root{--paper:#000;--ink:#eee}}::part(heading){letter-spacing:0.02em}',
  );
  const css = hostedThemeCss(look, (file) => file);
  const selectors = [...css.matchAll(/([^{}]+)\{(?=[^{}]*\})/g)].map(([, one = '']) => one);
  expect(selectors.length).toBeGreaterThan(3);
  for (const one of selectors) expect(one).toContain('.linewright:not(#_)');
  expect(css).toContain('.linewright:not(#_) :is(.course-main');
});
