/** `:judge[…]` by the built program: listed by `check --judgements`, asked again by `changes`. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, inject, test } from 'vitest';

const cli = path.resolve(import.meta.dirname, '../dist/cli/main.js');
const work = mkdtempSync(path.join(tmpdir(), 'linewright-judge-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

function linewright(...args: readonly string[]) {
  return spawnSync(process.execPath, [cli, ...args], {
    encoding: 'utf8',
    cwd: work,
    env: {
      ...process.env,
      NO_COLOR: '1',
      LINEWRIGHT_CACHE: path.join(inject('runFolder'), 'cache'),
    },
  });
}

function writeCourse(name: string, moves: string, more = ''): void {
  const files = {
    'course.yaml': 'title: Small\nid: small\nside: white\n',
    'chapters/1.md': `---\ntitle: One\n---\n\n\`\`\`moves\n${moves}\n\`\`\`\n${more}`,
    'news/2025-06-01.md': '---\ntitle: First\ndate: 2025-06-01\n---\n',
  };
  for (const [file, content] of Object.entries(files)) {
    const full = path.join(work, name, file);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, content);
  }
}

const judged = '1. e4 e5 {:judge[2025-07-01 The centre is fair.]} 2. Nf3 {:judge[Better than f4.]}';
const more =
  '\n```exercise after="1. e4 e5"\nask: What now?\nanswer: Nf3 {:judge[2025-01-01 The usual move.]}\n```\n';
writeCourse('old', `${judged} Nc6 =`, more);
writeCourse('new', `${judged} Nc6 3. Bb5`, more);

test('all are listed, with place, date, move and text', () => {
  const { stdout, status } = linewright('check', '--judgements', 'old');
  expect(stdout).toBe(
    [
      'chapters/1.md:6:11  2025-07-01  after 1...e5\n  The centre is fair.',
      'chapters/1.md:6:59  no date  after 2.Nf3\n  Better than f4.',
      'chapters/1.md:11:14  2025-01-01\n  The usual move.',
      '3 judgements.\n',
    ].join('\n'),
  );
  expect(status).toBe(0);
});

test('as data', () => {
  const { stdout } = linewright('check', '--judgements', '--format', 'json', 'old');
  expect(JSON.parse(stdout).judgements[1]).toEqual({
    file: 'chapters/1.md',
    start: { line: 6, column: 59 },
    end: { line: 6, column: 82 },
    text: 'Better than f4.',
    after: '2.Nf3',
    fen: 'rnbqkbnr/pppp1ppp/8/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R b KQkq - 1 2',
  });
});

test('formats for findings are refused', () => {
  const { stderr, status } = linewright('check', '--judgements', '--format', 'sarif', 'old');
  expect(stderr).toMatch(/^Judgements are only listed\. /);
  expect(status).toBe(2);
});

test('a new edition asks again for what is older or stands before other lines, and tells students nothing', () => {
  const { stdout, stderr, status } = linewright('changes', 'old', 'new', '--format', 'markdown');
  expect(stdout).not.toContain('judgement');
  expect(stderr).toBe(
    [
      '\nFor you alone: is this still your judgement? If so, date it anew.',
      'chapters/1.md:6:11  2025-07-01  after 1...e5\n  The centre is fair.',
      '  (what the course shows from there on has changed)',
      'chapters/1.md:6:59  no date  after 2.Nf3\n  Better than f4.',
      '  (what the course shows from there on has changed)',
      'chapters/1.md:11:14  2025-01-01\n  The usual move.',
      '  (older than the previous edition)\n',
    ].join('\n'),
  );
  expect(status).toBe(0);
  const same = linewright('changes', 'old', 'old');
  expect(same.stderr).not.toContain('The centre is fair');
  expect(same.stderr).toContain('Better than f4');
});
