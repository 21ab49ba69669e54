import { expect, test } from 'vitest';
import { stateMark, stateSprite, states } from './state-marks.ts';

test('each sign is in the sprite, and no two have the same shape', () => {
  const sprite = stateSprite();
  for (const state of states) {
    const [, href] = stateMark(state).match(/href="#([^"]+)"/) ?? [];
    expect(sprite).toContain(`id="${href}"`);
  }
  const drawn = [...sprite.matchAll(/ d="([^"]+)"/g)].map(([, path]) => path);
  expect(new Set(drawn).size).toBe(states.length);
});
