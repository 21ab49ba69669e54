/** Practice in the browser: over days, in two tabs, without storage, from files, by keys alone. */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { pathTo, practiceCourse } from '../../src/browser/practice/session/practice-course.ts';
import {
  type CourseNotes,
  type CourseTable,
  lineSession,
  missedKey,
  positionAddress,
  writeMissed,
} from '../../src/contract/index.ts';
import { violationsInBoth } from './axe.ts';
import { openPage, phone, useDemo, windows } from './browser.ts';
import {
  addPlayer,
  button,
  changeTable,
  dayAfter,
  firstDay,
  learn,
  line,
  playOn,
  practiceOf,
  readBack,
  savedText,
  status,
  tally,
  today,
  toOverview,
  type,
  withMoves,
} from './practising.ts';

const demo = useDemo();
const { open, practising } = practiceOf(demo);

test('over several days: learnt, not asked, asked when due, missed, asked again', () =>
  practising(async (page) => {
    expect(await today(page)).toMatch(/^The course has \d+ moves for you to find\./);
    const [, , all = 0] = await tally(page);
    await learn(page);
    await playOn(page);
    expect(await page.locator('.practice-end').textContent()).toContain('All 8 from memory.');
    await toOverview(page);
    expect(await tally(page)).toEqual([0, 8, all - 8, 0]);
    expect(await today(page)).toContain('Nothing comes back today.');

    await page.clock.setFixedTime(dayAfter(1));
    await open(page);
    expect(await today(page)).toContain('Nothing comes back today.');

    await page.clock.setFixedTime(dayAfter(3));
    await open(page);
    expect(await today(page)).toContain('8 moves come back today.');
    await button(page, 'Only the 8 that come back').click();
    await playOn(page, 1);
    expect(await page.locator('.practice-end').textContent()).toContain('7 of 8 from memory.');
    expect(await page.locator('.practice-missed a').getAttribute('href')).toMatch(/\.html#/);
    await toOverview(page);
    // Seven are asked in two weeks: known. The one that was missed comes tomorrow.
    expect(await tally(page)).toEqual([7, 1, all - 8, 0]);

    await page.clock.setFixedTime(dayAfter(4));
    await open(page);
    expect(await today(page)).toContain('One move comes back today.');
    // The clock is put back two years: nothing is lost, and what seems to come from the future is asked.
    await page.clock.setFixedTime(dayAfter(-700));
    await open(page);
    expect(await tally(page)).toEqual([7, 1, all - 8, 8]);
  }));

test('a wrong move, a legal one, one that the course mentions, and one that it warns of are told apart', () =>
  practising(
    async (page) => {
      await learn(page);
      await page.evaluate('player.step()');
      expect(await status(page)).toMatch(
        /^Here Black plays 2\.\.\.e6\. White plays 2\.c4\. Good\./,
      );
      for (let n = 0; n < 30 && !(await page.locator('.practice-hint').isVisible()); n++) {
        await page.evaluate('player.step()');
      }
      expect(await status(page)).toBe('What does Black play? White plays 1.d4. ');
      expect(await line(page)).toBe('1.\u00a0d4');
      // WCAG 2.2, 4.1.3: what is said of an answer is said where something could be heard before.
      const region = await page.locator('.practice-talk [role=status]').elementHandle();
      await type(page, 'Ke4');
      expect(await status(page)).toContain('Ke4 is not a legal move here.');
      expect(await region?.evaluate((element) => element.isConnected)).toBe(true);
      await type(page, 'Nf6');
      expect(await status(page)).toBe(
        'Good too. Which one does the course advise?1...Nf6 is a good move, and the course mentions it.A comment on it.',
      );
      expect(await page.locator('.practice-said').textContent()).toBe('A comment on it.');
      await type(page, 'f6');
      expect(await status(page)).toBe(
        'Not that one. Try again.1...f6 is a mistake, says the course.',
      );
      await type(page, 'a6');
      expect(await status(page)).toContain('can be played, but it is not the move of the course');
      expect(await page.locator('.practice-said').textContent()).toBe('');
      await button(page, 'A hint').click();
      expect(await status(page)).toContain('It is a move of the pawn on d7.');
      await button(page, 'Show me').click();
      expect(await status(page)).toContain('The course plays 1...d5');
    },
    {
      prepare: async (page) => {
        await changeTable(page, (table) => {
          const [first] = table.positions[1]?.moves ?? [];
          if (first === undefined) throw new Error('the course begins otherwise');
          const more = [
            { ...first, san: 'Nf6', kind: 'option' },
            { ...first, san: 'f6', kind: 'bad' },
          ] as const;
          return withMoves(table, 1, [first, ...more]);
        });
        await page.route(/course-notes/, async (route) => {
          const response = await route.fetch();
          const more = `courseNotes.notes["1 Nf6"]={html:"A comment on it."};`;
          await route.fulfill({
            body: `${await response.text()}${more}`,
            contentType: 'text/javascript',
          });
        });
      },
    },
  ));

test('a new edition: changed advice is asked again, what is gone rests and comes back', () =>
  practising(async (page) => {
    await learn(page);
    await playOn(page);
    await changeTable(page, (table) => {
      const [first] = table.positions[1]?.moves ?? [];
      if (first === undefined) throw new Error('the course begins otherwise');
      // 1...Nf6 leads elsewhere, but for its key nothing is asked of that position.
      return withMoves(table, 1, [{ ...first, san: 'Nf6' }]);
    });
    await open(page);
    expect(await today(page)).toMatch(
      /^One move comes back today\. For one of them the course has new advice\./,
    );
    await button(page, 'Only the one that comes back').click();
    expect(await status(page)).toContain('Now Black plays 1...Nf6.');
    await playOn(page);
    await toOverview(page);
    expect(await today(page)).toContain('Nothing comes back today.');

    await changeTable(page, (table) => withMoves(table, 1, []));
    await open(page);
    const resting = page.locator('.practice-resting');
    expect(await resting.textContent()).toContain(
      'One move that you learnt is not asked by this edition',
    );
    await page.unroute(/course-table/);
    await open(page);
    expect(await resting.isVisible()).toBe(false);
    expect(await today(page)).toContain('One move comes back today.');
  }));

test('two tabs lose nothing, and each sees what the other did', () =>
  practising(async (page, context) => {
    const other = await context.newPage();
    await other.clock.setFixedTime(firstDay);
    await addPlayer(other);
    await open(other);
    const [, , all = 0] = await tally(page);
    // Both learn, but not the same: here one chapter only.
    await other.getByRole('checkbox').first().uncheck();
    await learn(page);
    await learn(other);
    await playOn(page);
    await playOn(other);
    await toOverview(page);
    await toOverview(other);
    const [, learning = 0, unseen = 0] = await tally(page);
    expect(learning).toBeGreaterThan(8);
    expect(learning + unseen).toBe(all);
    expect(await tally(other)).toEqual(await tally(page));
    // What is answered in one shows in the other without a touch.
    await learn(page);
    await playOn(page);
    await expect.poll(async () => (await tally(other))[1]).toBeGreaterThan(learning);
  }));

/** Presses a button before an act is answered: is it still the same one at that point once `until` can be seen? */
async function stays(page: Page, name: string, act: string, until: RegExp): Promise<void> {
  // In one go, so that no answer comes in between.
  await page.evaluate(`{
    ${act};
    const held = [...document.querySelectorAll('.practice-acts button')].find((each) =>
      each.textContent.startsWith('${name}'));
    const { x, y, width, height } = held.getBoundingClientRect();
    globalThis.isStill = () =>
      document.elementFromPoint(x + width / 2, y + height / 2)?.closest('button') === held;
  }`);
  await button(page, until).waitFor();
  expect(await page.evaluate('isStill()')).toBe(true);
}

test('a button is not exchanged or moved while it is pressed', () =>
  practising(async (page) => {
    await learn(page);
    await stays(page, 'Back to the overview', 'player.playOn(0)', /^Go on, with/);
    await toOverview(page);
    // Days later the reader comes back to the tab.
    await page.clock.setFixedTime(dayAfter(3));
    const seen = "document.dispatchEvent(new Event('visibilitychange'))";
    await stays(page, 'Begin', seen, /^Only/);
  }));

test('an address begins a session of a chapter, of a line, or of what games missed', () =>
  practising(async (page) => {
    const about = page.locator('.practice-session .practice-about');
    const left = () => page.locator('.practice-strip li').count();
    const follow = async (hash: string) => {
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
    };
    await page.getByRole('link', { name: 'White has other ideas' }).click();
    await expect.poll(() => about.textContent()).toBe('Practice: White has other ideas');
    expect(await page.locator('h1').textContent()).toMatch(/^Here Black plays \d+\.\.\./);
    // After the moves come the exercises of their chapter, the whole answer of each to be played.
    await button(page, 'Stop here').click();
    await button(page, /Then .*exercises?/).click();
    const exercise = page.locator('.practice-exercise');
    await exercise.locator('.squares').waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('An exercise');
    await button(page, 'Another exercise').click();
    await exercise.locator('.squares').waitFor();
    expect(await button(page, 'Another exercise').count()).toBe(0);
    // What was not answered can be begun again; the overview is that of the whole course.
    await toOverview(page);
    expect(new URL(page.url()).hash).toBe('');
    expect(await page.locator('h1').textContent()).toBe('Practice');

    const { keys, line: address } = await page.evaluate(() => {
      const asked = globalThis.courseTable?.positions.filter(({ moves }) =>
        moves.some(({ kind }) => kind === 'advice'),
      );
      const keys = (asked ?? []).map(({ key }) => key);
      const [tenth = ''] = keys.slice(9);
      return { keys: [keys[20], keys[3]], line: tenth };
    });
    await follow(lineSession(positionAddress(address)).replace(/^.*#/, ''));
    await expect.poll(() => about.textContent()).toMatch(/^Practice: 1\.d4 d5 /);
    await page.evaluate(([name, text]) => sessionStorage.setItem(name, text), [
      missedKey('tarrasch-defence'),
      writeMissed(keys.flatMap((key) => key ?? [])),
    ] as const);
    await follow('missed');
    await expect.poll(() => about.textContent()).toBe('Practice: what your games missed');
    expect(await left()).toBe(2);
    await follow('page-text');
    expect(await left()).toBe(2);
    await playOn(page);
    expect(await page.locator('h1').textContent()).toBe('All 2 from memory.');
    // Nothing of it is left, and the page asks no more.
    await toOverview(page);
    expect((await tally(page)).slice(0, 2)).toEqual([0, 2]);
  }));

test('no line of the built course leads through an option, a mistake or a reference', async () => {
  const read = async <Value>(name: string): Promise<Value> => {
    const file = (await readdir(demo().site)).find(
      (each) => each.startsWith(`${name}.`) && each !== `${name}.js`,
    );
    const text = await readFile(path.join(demo().site, file ?? ''), 'utf8');
    const [, json = '""'] = /JSON\.parse\((.*)\);\s*$/s.exec(text) ?? [];
    return JSON.parse(JSON.parse(json) as string) as Value;
  };
  const table = await read<CourseTable>('course-table');
  const course = practiceCourse(table, await read<CourseNotes>('course-notes'));
  const all = new Set(table.chapters.keys());
  for (const { position } of course.items) {
    const { steps } = pathTo(course, position, all);
    expect(steps.map(({ move }) => move.kind).filter((kind) => kind !== 'reply')).toEqual(
      steps.flatMap(({ from }) => (course.itemAt.has(from) ? ['advice'] : [])),
    );
    expect(steps.some(({ move }) => course.aside.has(move.to))).toBe(false);
  }
  // An option of the first moves, and what a game looks like from the other side.
  const asked = new Set(course.items.map(({ key }) => key));
  const isAsked = (placement: string) => [...asked].some((key) => key.startsWith(`${placement} b`));
  expect(isAsked('rnbqkbnr/pp3ppp/4p3/2pP4/3P4/2N5/PP2PPPP/R1BQKBNR')).toBe(true);
  for (const option of [
    // 4...cxd4 5.Qxd4, the gambit.
    'rnbqkbnr/pp3ppp/4p3/3P4/3Q4/2N5/PP2PPPP/R1B1KBNR',
    // 22.Bxf6 in a game, for reference.
    '3r1k2/pp1r1ppp/5B2/2Rpn3/8/6P1/PP2PPBP/3R2K1',
  ]) {
    const here = table.positions.find(({ key }) => key.startsWith(`${option} b`));
    expect(here?.moves.length, option).toBeGreaterThan(0);
    expect(isAsked(option)).toBe(false);
  }
});

describe('where nothing can be kept', () => {
  test('storage denied is told; one can practise and take the progress along', () =>
    practising(
      async (page) => {
        const trouble = page.getByRole('alert');
        expect(await trouble.textContent()).toContain('does not let the page keep anything');
        await learn(page);
        await playOn(page);
        await toOverview(page);
        expect((await tally(page))[1]).toBe(8);
        expect(JSON.parse(await savedText(page))).toMatchObject({ count: 8 });
      },
      {
        prepare: async (page) => {
          await page.addInitScript(() => {
            IDBFactory.prototype.open = () => {
              throw new DOMException('denied', 'SecurityError');
            };
          });
        },
      },
    ));

  test('full storage is told at the answer; with room again, all is written', () =>
    practising(async (page) => {
      await page.evaluate(() => {
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = () => {
          throw new DOMException('full', 'QuotaExceededError');
        };
        Object.assign(globalThis, {
          makeRoom: () => {
            IDBObjectStore.prototype.put = put;
          },
        });
      });
      const trouble = page.getByRole('alert');
      await learn(page);
      await playOn(page);
      expect(await trouble.textContent()).toContain('no room left');
      await toOverview(page);
      expect((await tally(page))[1]).toBe(8);
      await page.evaluate('makeRoom()');
      await learn(page);
      await playOn(page);
      await toOverview(page);
      expect(await trouble.isVisible()).toBe(false);
      await open(page);
      expect((await tally(page))[1]).toBe(16);
    }));
});

test('a file takes progress to another browser; a foreign or cut one changes nothing', () =>
  practising(async (page) => {
    await learn(page);
    await playOn(page);
    await toOverview(page);
    const before = await tally(page);
    const text = await savedText(page);
    await practising(async (elsewhere) => {
      const untouched = await tally(elsewhere);
      const told = elsewhere.locator('.practice-keeping [role=status]');
      const read = async (name: string, content: string) => {
        const file = path.join(inject('runFolder'), name);
        await writeFile(file, content);
        await readBack(elsewhere, file);
      };
      // Of a course for White: none of its positions is asked here.
      const foreign = text
        .replace('"course": "tarrasch-defence"', '"course": "other"')
        .replace(/"title": "[^"]*"/, '"title": "The Other Course"')
        .replaceAll(/("key": "\S+) b /g, '$1 w ');
      await read('foreign.json', foreign);
      await expect.poll(() => told.textContent()).toContain('another course, “The Other Course”');
      await read('cut.json', text.slice(0, 900));
      await expect.poll(() => told.textContent()).toContain('This file is cut short.');
      await read('letter.txt', 'Dear student');
      await expect.poll(() => told.textContent()).toContain('holds no progress');
      expect(await tally(elsewhere)).toEqual(untouched);
      await read('good.json', text);
      await expect.poll(() => told.textContent()).toContain('8 moves were taken');
      expect(await tally(elsewhere)).toEqual(before);
      await read('again.json', text);
      await expect.poll(() => told.textContent()).toContain('nothing in the file is later');
    });
  }));

test('all can be forgotten after a second question, in every tab; a saved file is not touched', () =>
  practising(async (page, context) => {
    const untouched = await tally(page);
    await learn(page);
    await playOn(page);
    await toOverview(page);
    const learnt = await tally(page);
    expect(learnt).not.toEqual(untouched);
    const other = await context.newPage();
    await other.clock.setFixedTime(firstDay);
    await open(other);
    const file = path.join(inject('runFolder'), 'before-forgetting.json');
    await writeFile(file, await savedText(page));
    await page.getByText('Forget everything').press('Enter');
    expect(await tally(page)).toEqual(learnt);
    await button(page, 'Forget it now').press('Enter');
    const told = page.locator('.practice-keeping [role=status]');
    await expect.poll(() => told.textContent()).toBe('Forgotten. You begin anew.');
    expect(await tally(page)).toEqual(untouched);
    await expect.poll(() => tally(other)).toEqual(untouched);
    await open(page);
    expect(await tally(page)).toEqual(untouched);
    await readBack(page, file);
    await expect.poll(() => tally(page)).toEqual(learnt);
  }));

test('keys alone are enough (WCAG 2.1.1), and the focus is where one goes on', () =>
  practising(async (page) => {
    const focused = () =>
      page.evaluate(
        () =>
          document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent,
      );
    await button(page, /^Begin/).focus();
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('Here Black plays 1...d5.');
    await page.keyboard.press('Shift+Tab');
    // Black sits below: d7 is walked to from h1.
    expect(await focused()).toMatch(/^h1/);
    for (const key of [...Array(4).fill('ArrowRight'), ...Array(6).fill('ArrowDown')]) {
      await page.keyboard.press(key);
    }
    expect(await focused()).toBe('d7, Black pawn');
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    expect(await status(page)).toContain('2...e6');
    // 2...e6 has no comment, 3...c5 has one: then the button to go on has the focus.
    await type(page, 'e6');
    await type(page, 'c5');
    expect(await focused()).toBe('Go on');
    await page.keyboard.press('Enter');
    expect(await status(page)).toContain('4...exd5');
    // Who has written a move goes on writing.
    expect(await page.evaluate(() => document.activeElement?.matches('.move-entry input'))).toBe(
      true,
    );
  }));

test('axe-core finds nothing, from start to end, in light and in the dark', () =>
  practising(
    async (page) => {
      const check = async (where: string) => {
        expect(await violationsInBoth(page), where).toEqual([]);
      };
      await page.locator('.practice-how summary').click();
      await check('start');
      await learn(page);
      await check('a new move');
      for (const move of ['d5', 'e6', 'c5']) await type(page, move);
      await check('a comment');
      await playOn(page, 2);
      await check('end');
      await button(page, /Then .*exercises?/).click();
      await page.locator('.practice-exercise .squares').waitFor();
      await check('an exercise');
    },
    { viewport: windows.phone },
  ));

test('on a phone all that is touched is 44 pixels high, and nothing lies beyond the edge', () =>
  practising(async (page) => {
    const small = () =>
      page.evaluate(() => {
        const found = document.querySelectorAll<HTMLElement>(
          'main :is(button, summary, label, input)',
        );
        return [...found]
          .filter((each) => each.checkVisibility() && !each.matches('.squares *, label *'))
          .filter(
            (each) => each.getBoundingClientRect().height < 43.9 && !each.querySelector('input'),
          )
          .map((each) => each.outerHTML);
      });
    const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
    expect(await small()).toEqual([]);
    expect(await fits()).toBe(true);
    await learn(page);
    expect(await small()).toEqual([]);
    expect(await fits()).toBe(true);
  }, phone));

test('a double-click on the file is enough, and progress is kept there too', async () => {
  const { page } = await openPage(demo().browser);
  await addPlayer(page);
  const address = String(pathToFileURL(path.join(demo().site, 'practice.html')));
  await page.goto(address);
  await page.locator('.practice-today').waitFor();
  await learn(page);
  await playOn(page);
  await toOverview(page);
  await page.goto(address);
  await page.locator('.practice-today').waitFor();
  expect((await tally(page))[1]).toBe(8);
  await page.context().close();
});
