import { expect, test } from 'vitest';
import { topOf } from '../../diagnostics/index.ts';
import type { PictureShape } from '../../media/index.ts';
import { findMisshapenSigns } from './find-misshapen-signs.ts';

type Told = readonly [rule: string, message: string];

/** What is said of one picture as an icon, a card and a logo. */
function saidOf(file: string, shape: Partial<PictureShape>): Record<string, Told[]> {
  const whole: PictureShape = { bytes: 1000, hasText: false, ...shape };
  const said = (settings: object) =>
    findMisshapenSigns(
      {
        title: 'A',
        side: 'white',
        language: 'en',
        rules: {},
        ownRules: [],
        notation: 'letters',
        ...settings,
      },
      { icon: topOf('course.yaml'), card: topOf('course.yaml'), logo: topOf('course.yaml') },
      new Map([[file, whole]]),
    ).map(({ rule, message }): Told => [rule, message.replace(/^`[^`]*` /, '')]);
  return {
    icon: said({ icon: file }),
    card: said({ card: file }),
    logo: said({ logo: { light: file } }),
  };
}

const sized = (width: number, height: number) => ({ size: { width, height } });

test.each([
  [
    'the icon that is asked for',
    'media/a.png',
    sized(512, 512),
    { icon: [], card: ['512 by 512 pixels, and a card'], logo: [] },
  ],
  [
    'the card that is asked for',
    'media/a.png',
    sized(1200, 630),
    { icon: ['1200 by 630 pixels, and an icon is square'], card: [], logo: [] },
  ],
  [
    'a card in twice the size, and off by a hair',
    'media/a.jpg',
    sized(2400, 1256),
    { icon: ['icon is square'], card: [], logo: [] },
  ],
  [
    'a small square',
    'media/a.png',
    sized(48, 48),
    {
      icon: ['up to 512 by 512'],
      card: ['sites cut off'],
      logo: ['dense screens show a logo 56 pixels high'],
    },
  ],
  [
    'a small square that is drawn',
    'media/a.svg',
    sized(48, 48),
    { icon: [], card: ['sites cut off'], logo: [] },
  ],
  [
    'a small card',
    'media/a.png',
    sized(600, 315),
    { icon: ['icon is square'], card: ['sites show it blurred'], logo: [] },
  ],
  [
    'a tower',
    'media/a.svg',
    sized(100, 300),
    { icon: ['icon is square'], card: ['sites cut off'], logo: ['one line of text'] },
  ],
  [
    'no size at all',
    'media/a.svg',
    {},
    {
      icon: ['does not say how large'],
      card: ['does not say how large'],
      logo: ['does not say how large'],
    },
  ],
  [
    'a heavy one with text',
    'media/a.svg',
    { ...sized(10, 10), hasText: true, bytes: 300_001 },
    { icon: ['has 301 KB', 'holds text'], card: ['sites cut off'], logo: [] },
  ],
])('%s', (_name, file, shape, wanted: Record<string, string[]>) => {
  const said = saidOf(file, shape);
  for (const [setting, parts] of Object.entries(wanted)) {
    const found = said[setting] ?? [];
    expect(found.map(([, message]) => message)).toEqual(
      parts.map((part) => expect.stringContaining(part)),
    );
  }
});

test('what each page would load or lose is an error, the rest a warning', () => {
  const { icon = [] } = saidOf('media/a.svg', {
    ...sized(10, 20),
    hasText: true,
    bytes: 400_000,
  });
  expect(icon.map(([rule]) => rule)).toEqual(['course-setting', 'course-setting', 'picture-shape']);
});
