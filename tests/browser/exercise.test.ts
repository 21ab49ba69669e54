import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { renderCourse } from '../../src/site/render/testing/render-course.ts';
import { onPage, phone, useDemo } from './browser.ts';

const demo = useDemo();

/** The first exercise of the course: the queen on a4 is caught by 14...Nb4, seen from Black's side. */
function solving(
  use: (exercise: Locator, page: Page) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<void> {
  return onPage(
    demo().browser,
    async (page) => {
      await page.goto(`${demo().address}isolated-pawn.html`);
      const exercise = page.locator('.exercise').first();
      // A hand comes to the page before it scrolls: then all of the text is laid out.
      await page.mouse.move(9, 9);
      await exercise.scrollIntoViewIfNeeded();
      await use(exercise, page);
    },
    options,
  );
}

/** The middle of a square, reckoned from two pieces that stand on the sixth rank. */
async function middleOf(exercise: Locator, square: string): Promise<{ x: number; y: number }> {
  const c6 = await exercise.locator('[data-square="c6"]').first().boundingBox();
  const f6 = await exercise.locator('[data-square="f6"]').first().boundingBox();
  if (!c6 || !f6) throw new Error('the knights have moved');
  const side = (c6.x - f6.x) / 3;
  const files = 'c'.charCodeAt(0) - square.charCodeAt(0);
  const ranks = Number(square.charAt(1)) - 6;
  return {
    x: c6.x + c6.width / 2 + files * side,
    y: c6.y + c6.height / 2 + ranks * side,
  };
}

async function type(exercise: Locator, move: string): Promise<void> {
  await exercise.getByRole('textbox').fill(move);
  await exercise.getByRole('button', { name: 'Play' }).click();
}

const square = (exercise: Locator, name: string) =>
  exercise.locator(`.squares [data-square="${name}"]`);
const verdict = (exercise: Locator) => exercise.locator('.verdict').textContent();
/** What the exercise's board draws on a square, such as `#piece-bn`. */
const drawnOn = async (exercise: Locator, name: string) => {
  const piece = exercise.locator(`.pieces [data-square="${name}"]`);
  return (await piece.count()) === 0 ? undefined : piece.getAttribute('href');
};

test('what cannot be, an illegal move, a legal one and the answer are told apart', () =>
  solving(async (exercise) => {
    const status = exercise.locator('[aria-live]');
    await square(exercise, 'c6').click();
    await square(exercise, 'c5').click();
    expect(await verdict(exercise)).toBe('The knight on c6 cannot go to c5.');
    await square(exercise, 'a4').click();
    expect(await verdict(exercise)).toBe('Black is to move.');
    await type(exercise, 'please');
    expect(await verdict(exercise)).toBe('“please” is not a move; write it as Nf3.');
    expect(await drawnOn(exercise, 'c6')).toBe('#piece-bn');
    await type(exercise, 'Nb5');
    await expect.poll(() => status.textContent()).toContain('not a legal move');
    await type(exercise, 'a6');
    await expect
      .poll(() => status.textContent())
      .toContain('can be played, but it is not the answer');
    await type(exercise, 'Nb4');
    await expect.poll(() => status.textContent()).toContain('Right.');
  }));

test('two clicks on the board answer, though its script is not there yet', () =>
  onPage(demo().browser, async (page) => {
    let letIn: () => void = () => undefined;
    const clicked = new Promise<void>((resolve) => {
      letIn = resolve;
    });
    await page.route('**/exercise.*.js', async (route) => {
      await clicked;
      await route.continue();
    });
    await page.goto(`${demo().address}isolated-pawn.html`);
    const exercise = page.locator('.exercise').first();
    await page.mouse.move(9, 9);
    await exercise.scrollIntoViewIfNeeded();
    for (const square of ['c6', 'b4']) {
      const { x, y } = await middleOf(exercise, square);
      await page.mouse.click(x, y);
    }
    letIn();
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('Right.');
  }));

test('dragging the piece answers', () =>
  solving(async (exercise, page) => {
    const [from, to] = [await middleOf(exercise, 'c6'), await middleOf(exercise, 'b4')];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('Right.');
  }));

test('the keyboard walks over the squares and chooses', () =>
  solving(async (exercise, page) => {
    // Black sits below: h1 is the first square, and to the right lie g, f, e, d, c.
    await square(exercise, 'h1').focus();
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight']) {
      await page.keyboard.press(key);
    }
    for (let rank = 1; rank < 6; rank++) await page.keyboard.press('ArrowDown');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'c6, Black knight',
    );
    await page.keyboard.press('Enter');
    expect(await square(exercise, 'c6').getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Space');
    expect(await verdict(exercise)).toContain('Right.');
    // The answer goes on: the focus stays on the squares, and the reply is told.
    await expect
      .poll(() => verdict(exercise))
      .toContain('14.Qb3 follows. Find the next move (2 of 2)');
    expect(await exercise.locator('.verdict .unseen').textContent()).toContain('queen to b3');
    expect(await square(exercise, 'b4').evaluate((own) => own === document.activeElement)).toBe(
      true,
    );
  }));

test('a move that the author names as wrong is shown with his comment, and one may try again', () =>
  solving(async (exercise) => {
    await square(exercise, 'c6').click();
    await square(exercise, 'd4').click();
    expect(await verdict(exercise)).toBe('Not the answer.');
    expect(await exercise.locator('.exercise-talk').textContent()).toContain('This helps White');
    expect(await drawnOn(exercise, 'd4')).toBe('#piece-bn');
    // The next touch is on the exercise's own position again.
    await square(exercise, 'c6').click();
    expect(await drawnOn(exercise, 'd4')).toBe('#piece-wn');
    expect(await verdict(exercise)).toBe('');
    await square(exercise, 'b4').click();
    expect(await verdict(exercise)).toContain('Right.');
  }));

test('a good move that is not the answer is told from a wrong one', () =>
  solving(async (_first, page) => {
    const exercise = page.locator('.exercise').nth(2);
    await type(exercise, 'Bb6');
    expect(await verdict(exercise)).toBe('Good too, but not the answer.');
    expect(await exercise.locator('.exercise-talk').textContent()).toContain('Not bad at all');
    await exercise.getByRole('button', { name: 'Look for the answer' }).click();
    await type(exercise, 'Bxf2+');
    await expect.poll(() => verdict(exercise)).toContain('10.Kxf2 follows');
  }));

test('every move of the answer is found, the replies are played; then it is played through, or asked anew', () =>
  solving(async (exercise, page) => {
    await type(exercise, '13...Nb4');
    await expect.poll(() => verdict(exercise)).toContain('14.Qb3 follows');
    expect(await exercise.locator('.exercise-made').textContent()).toBe('13...Nb4 14.Qb3');
    expect(await drawnOn(exercise, 'b3')).toBe('#piece-wq');
    expect(await exercise.locator('.exercise-talk .move').count()).toBe(0);
    await type(exercise, 'b5');
    expect(await verdict(exercise)).toBe('14...b5 can be played, but it is not the answer.');
    await type(exercise, 'a5');
    expect(await verdict(exercise)).toBe('Right. That is the whole answer.');
    await exercise.getByRole('button', { name: 'Previous move' }).click();
    expect(await exercise.locator('.move[aria-current]').allTextContents()).toEqual([
      '14.\u00a0Qb3',
    ]);
    await exercise.locator('.move', { hasText: 'a5' }).click();
    expect(await drawnOn(exercise, 'a5')).toBe('#piece-bp');
    expect(new URL(page.url()).hash).toBe('');
    await exercise.getByRole('button', { name: 'Start again' }).click();
    expect(await drawnOn(exercise, 'a5')).toBeUndefined();
    expect(await exercise.locator('.exercise-talk .move').count()).toBe(0);
    // Who does not wait for the reply answers it all the same.
    await type(exercise, 'Nb4');
    await type(exercise, 'a5');
    expect(await verdict(exercise)).toBe('Right. That is the whole answer.');
    await page.reload();
    await expect.poll(() => verdict(exercise)).toBe('');
  }));

test('the answer can be asked for, and its lines are none of the page’s own board', () =>
  solving(async (exercise, page) => {
    const caption = page.locator('.board-caption');
    // The last moves before the exercise: the board has followed the scrolling.
    await expect.poll(() => caption.textContent()).toBe('after 23.Rcxd5');
    await exercise.getByRole('button', { name: 'Show the answer' }).click();
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('The answer:');
    await exercise.getByRole('button', { name: 'Next move' }).click();
    expect(await exercise.locator('.move[aria-current]').count()).toBe(1);
    expect(await caption.textContent()).toBe('after 23.Rcxd5');
  }));

test('without a script there are the question, the board, and the folded answer', () =>
  solving(
    async (exercise) => {
      expect(await exercise.locator('svg.board').isVisible()).toBe(true);
      expect(await exercise.getByText('What do you play?').isVisible()).toBe(true);
      const answer = exercise.locator('.answer');
      expect(await answer.locator('.moves').first().isVisible()).toBe(false);
      await answer.locator('summary').click();
      expect(await answer.locator('.answer-line').textContent()).toContain('Nb4');
      expect(await exercise.locator('input, .squares').count()).toBe(0);
    },
    { javaScriptEnabled: false },
  ));

test('on a phone fingers answer, and the page’s own board gives way', () =>
  solving(async (exercise, page) => {
    await exercise.locator('.exercise-board').evaluate((board) => {
      board.scrollIntoView({ block: 'center' });
    });
    await expect
      .poll(async () => (await page.locator('.beside').boundingBox())?.y)
      .toBeLessThan(-100);
    const size = await square(exercise, 'c6').boundingBox();
    // WCAG 2.2, 2.5.8: a target is at least 24 by 24 pixels.
    expect(Math.min(size?.width ?? 0, size?.height ?? 0)).toBeGreaterThanOrEqual(24);
    await square(exercise, 'c6').tap();
    await square(exercise, 'b4').tap();
    expect(await verdict(exercise)).toContain('Right.');
    for (const button of await exercise.locator('button:visible:not(.squares *)').all()) {
      expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    }
  }, phone));

test('on paper stand the questions with their first positions, and the answers at the end', () =>
  solving(async (exercise, page) => {
    await type(exercise, 'Nb4');
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    expect(await drawnOn(exercise, 'c6')).toBe('#piece-bn');
    expect(await exercise.locator('.exercise-talk').isVisible()).toBe(false);
    const answers = page.locator('.answers');
    expect(await answers.isVisible()).toBe(true);
    expect(await answers.textContent()).toContain('Nb4');
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'screen' });
    expect(await answers.isVisible()).toBe(false);
    expect(await drawnOn(exercise, 'c6')).toBeUndefined();
  }));

test('a pawn on the last rank asks what it becomes', async () => {
  // Its chapter, in the place of one of the course.
  const [chapter = ''] = renderCourse([
    '```exercise fen="8/2P5/8/8/8/k7/2K5/8 w - - 0 1"\nask: Win.\nanswer: c8=R\nwrong: c8=Q+ {Check, and no more.}\n```\n',
  ]);
  await onPage(demo().browser, async (page) => {
    await page.route('**/isolated-pawn.html', async (route) => {
      const body = (await (await route.fetch()).text()).replace(
        /(<article\b[^>]*>)[\s\S]*(?=<\/article>)/,
        (_, start) => start + chapter,
      );
      await route.fulfill({ body, contentType: 'text/html' });
    });
    await page.goto(`${demo().address}isolated-pawn.html`);
    const exercise = page.locator('.exercise');
    await square(exercise, 'c7').click();
    await square(exercise, 'c8').click();
    const choice = exercise.getByRole('group', { name: 'The pawn becomes a' });
    expect(await choice.getByRole('button').count()).toBe(4);
    await page.keyboard.press('Escape');
    expect(await choice.isVisible()).toBe(false);
    await type(exercise, 'c8');
    await choice.getByRole('button', { name: 'queen' }).click();
    expect(await verdict(exercise)).toBe('Not the answer.');
    await square(exercise, 'c7').click();
    await square(exercise, 'c8').click();
    await choice.getByRole('button', { name: 'rook' }).click();
    expect(await verdict(exercise)).toBe('Right.');
    expect(await drawnOn(exercise, 'c8')).toBe('#piece-wr');
  });
});

test('the page of all exercises keeps results, and leads through what is not solved', () =>
  onPage(demo().browser, async (page) => {
    await page.goto(`${demo().address}exercises.html`);
    const results = page.locator('.card-result');
    const count = await results.count();
    expect(count).toBeGreaterThan(5);
    expect(await results.first().textContent()).toBe(' not solved yet');
    await page.getByRole('link', { name: 'Begin', exact: true }).click();
    await page.waitForURL('**/isolated-pawn.html#exercise-*');
    const first = page.locator('.exercise').first();
    await type(first, 'Nb4');
    await type(first, 'a5');
    await first.getByRole('link', { name: 'Next exercise' }).click();
    const second = page.locator('.exercise').nth(1);
    expect(new URL(page.url()).hash).toBe(`#${await second.getAttribute('id')}`);
    // One hint after the other.
    await second.getByText('Hint 1 of 3').click();
    expect(await second.getByText('Hint 3 of 3').isVisible()).toBe(false);
    await second.getByText('Hint 2 of 3').click();
    expect(await second.getByText('Hint 3 of 3').isVisible()).toBe(true);
    await type(second, 'Bxb2');
    await type(second, 'Nc3');
    expect(await verdict(second)).toBe('Right. That is the whole answer.');
    await second.getByRole('link', { name: 'All exercises' }).click();
    await expect.poll(() => results.nth(1).textContent()).toBe(' solved after tries or hints');
    expect(await results.first().textContent()).toBe(' solved at once');
    expect(await page.locator('.exercises-solved').textContent()).toBe(`2 of ${count} solved`);
    const go = page.getByRole('link', { name: 'Go on with those not solved yet' });
    const third = page.locator('.exercise-cards a').nth(2);
    expect(await go.getAttribute('href')).toBe(await third.getAttribute('href'));
  }));
