import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { stringsFor } from '../strings/index.ts';
import { type KeyPlace, readerKeys } from './reader-keys.ts';

const [de, en, es] = [stringsFor('de'), stringsFor('en'), stringsFor('es')];

const browser = path.resolve(import.meta.dirname, '../browser');

/** The scripts that listen for keys, and where what they do is told. */
const listeners: Readonly<Record<string, KeyPlace | 'not told'>> = {
  'board/arrow-keys.ts': 'squares',
  'board/piece-tray.ts': 'squares',
  'board/promotion.ts': 'squares',
  'board/set-up.ts': 'squares',
  'board/squares.ts': 'squares',
  'exercise/walk-lines.ts': 'exercise',
  'free/draw-on-board.ts': 'squares',
  'free/free-board.ts': 'reading',
  'reading/keys.ts': 'reading',
  'search/start-search.ts': 'search',
  'tree/tree-keys.ts': 'tree',
  // A board on another site, which has no page of signs; it names its arrows.
  'embed/embedded-board.ts': 'not told',
  'embed/follow-moves.ts': 'not told',
  // Escape closes a list that opens, as a browser's own.
  'all-pages.ts': 'not told',
  // Any key is an act of the reader's.
  'first-act.ts': 'not told',
  'reading/hold.ts': 'not told',
  'settings/sound.ts': 'not told',
};

const names = ['Arrow(?:Left|Right|Up|Down)', 'Home', 'End', 'Enter', 'Escape', 'Delete'].join('|');
/** Keys by name, as literals or as names of a table. */
const keyIn = new RegExp(`(?<![\\w.])(${names})(?=['":])`, 'g');

const files = readdirSync(browser, { recursive: true, encoding: 'utf8' })
  .map((file) => file.split(path.sep).join('/'))
  // The desk is the author's alone: no published page has it, and its buttons name their keys.
  .filter(
    (file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && !file.startsWith('desk/'),
  );
const textOf = (file: string) => readFileSync(path.join(browser, file), 'utf8');
/** Natively a button's: told, and in no script. */
const ofBrowser = new Set(['squares Enter']);

test('every script that listens for keys is known: its keys stand in readerKeys, and so on the page of signs', () => {
  const listening = files.filter((file) => textOf(file).includes("'keydown'"));
  const unknown = listening.filter((file) => listeners[file] === undefined);
  expect(unknown, 'add them to readerKeys and here').toEqual([]);
});

test('what is told and what scripts listen for are the same keys', () => {
  const heard = new Set<string>(ofBrowser);
  for (const [file, place] of Object.entries(listeners)) {
    if (place === 'not told') continue;
    for (const [key] of textOf(file).matchAll(keyIn)) {
      heard.add(`${place} ${file.includes('board/') ? key.replace(/^Arrow.*/, 'Arrows') : key}`);
    }
  }
  const told = Object.entries(readerKeys).flatMap(([place, keys]) =>
    keys.map((key) => `${place} ${key}`),
  );
  expect([...heard].sort()).toEqual(told.sort());
});

test('each key has its words in each language', () => {
  for (const { signs } of [en, de, es]) {
    for (const [place, keys] of Object.entries(readerKeys)) {
      const does: Readonly<Record<string, string>> = signs.does[place as KeyPlace];
      expect(Object.keys(does).sort()).toEqual([...keys].sort());
      for (const key of keys) expect(signs.key[key]).toBeTruthy();
    }
  }
});
