import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findChromium } from './find-chromium.ts';

/**
 * What the tests need beside npm's packages: a Chromium for the browser tests, the table of
 * openings in Debian's pgn-extract for the tests against outside data, the EPUBCheck of the W3C,
 * Poppler's pdftotext, and Stockfish, a UCI engine (GPL: for tests only). On Debian as root they are
 * installed; elsewhere the browser must be there, and the tests on the table, by EPUBCheck, on paper and
 * with the engine are skipped.
 */
export default function setup(): void {
  const missing = [];
  if (!existsSync('/usr/share/pgn-extract/eco.pgn') && !existsSync('/usr/bin/pgn-extract')) {
    missing.push('pgn-extract');
  }
  if (!existsSync('/usr/share/java/epubcheck.jar')) missing.push('epubcheck');
  if (!existsSync('/usr/bin/pdftotext')) missing.push('poppler-utils');
  if (!existsSync('/usr/games/stockfish')) missing.push('stockfish');
  const isQuick = /headless-shell$/.test(findChromium() ?? '') || process.env.CHROME_PATH;
  if (!isQuick) missing.push('chromium-headless-shell');
  if (missing.length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    try {
      install(missing);
    } catch (error) {
      // A Chromium with windows does as well, and takes three times as long.
      if (missing.join() !== 'chromium-headless-shell' || !findChromium()) throw error;
      console.warn(`chromium-headless-shell could not be installed: ${error}`);
    }
  }
  if (!findChromium()) {
    throw new Error(
      'The browser tests need Chrome or Chromium, and none was found. Install one ' +
        '(Debian: apt-get install chromium-headless-shell; macOS: brew install --cask chromium), or set ' +
        'CHROME_PATH to its program.',
    );
  }
}

function install(packages: readonly string[]): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  execFileSync('apt-get', ['update', '-qq'], { stdio: 'ignore', env });
  execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages], {
    stdio: 'ignore',
    env,
  });
}
