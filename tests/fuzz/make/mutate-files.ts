import type { Files } from '../case.ts';
import type { Random } from '../random.ts';

const names = [
  ...[
    '2.md',
    '02.md',
    '10-x.md',
    'a b.md',
    'ä.md',
    'a\u0308.md',
    '#1.md',
    '?.md',
    '%41.md',
    '%.md',
    '"q".md',
  ],
  ...[
    "it's.md",
    '<b>.md',
    '\\.md',
    'index.md',
    'constructor.md',
    '__proto__.md',
    '1.md.md',
    '-.md',
    '\u202e.md',
  ],
  ...[
    '\u001b[31m.md',
    'line\nend.md',
    `${'long'.repeat(50)}.md`,
    '数.md',
    '&amp;.md',
    'B.md',
    'b.md',
  ],
];

/** Files that come, go, or get another name. */
export function mutateFiles(files: Files, random: Random): Record<string, string> {
  const changed: Record<string, string> = { ...files };
  const chapters = Object.keys(files).filter((file) => file.startsWith('chapters/'));
  const from = chapters.length > 0 ? random.pick(chapters) : undefined;
  const text = from === undefined ? 'Text.\n' : (files[from] ?? '');
  const name = random.pick(names);
  switch (random.below(7)) {
    case 0:
      if (from !== undefined) delete changed[from];
      changed[`chapters/${name}`] = text;
      break;
    case 1:
      changed[`chapters/${name}`] = text;
      break;
    case 2:
      if (from !== undefined) delete changed[from];
      break;
    case 3:
      changed[`media/${name.replace(/\.md$/, random.pick(['.png', '.svg', '.html', '.md', '']))}`] =
        '';
      break;
    case 4:
      changed[`news/${name}`] =
        `---\ntitle: News\ndate: 2026-11-2${random.below(10)}\n---\n\n[x](pos:main)\n`;
      break;
    case 5:
      changed[`news/${random.below(3)}.md`] = text.replace(/^---\n/, '---\ndate: 2026-11-25\n');
      break;
    default:
      changed['games/1.pgn'] = random.pick(['', '[Event "x"]\n\n1. e4 e5 *\n', text]);
  }
  return changed;
}
