import { type Browser, chromium } from 'playwright-core';
import { chromiumArguments } from '../setup/chromium-arguments.ts';
import { findChromium } from '../setup/find-chromium.ts';

/**
 * Steps through the moves of a chapter with the arrow key.
 * @returns the milliseconds that each move cost: script, style and layout, without painting;
 * undefined where there is no Chromium.
 */
export async function measureShownMoves(address: string): Promise<number[] | undefined> {
  const executablePath = findChromium();
  if (executablePath === undefined) return undefined;
  const browser = await chromium.launch({ executablePath, args: chromiumArguments });
  try {
    return await stepThrough(browser, address);
  } finally {
    await browser.close();
  }
}

async function stepThrough(browser: Browser, address: string): Promise<number[]> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(address);
  await page.waitForLoadState('networkidle');
  // The first move is not of the measure: before it the whole text is laid out.
  await page.keyboard.press('ArrowRight');
  await page.waitForTimeout(1000);
  return page.evaluate(async () => {
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    const caption = document.querySelector('.board-caption');
    const all: number[] = [];
    for (;;) {
      await frame();
      await frame();
      const before = caption?.textContent;
      const start = performance.now();
      document.body.dispatchEvent(
        new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }),
      );
      // Asks for style and layout to be done.
      document.body.getBoundingClientRect();
      const cost = performance.now() - start;
      if (caption?.textContent === before) return all;
      all.push(cost);
    }
  });
}
