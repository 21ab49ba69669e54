/** Lets a reader play the course's moves on the cover; loaded when its board is touched. */
import { listMoves } from '../../chess/rules.ts';
import { type CourseTable, tableLoaded, tableLoader } from '../../contract/course-table.ts';
import { loadScript } from '../load-script.ts';
import { playOnCover } from './play-on-cover.ts';

const figure = document.querySelector<HTMLElement>('.key-position');
if (figure !== null) void begin(figure);

async function begin(figure: HTMLElement): Promise<void> {
  const table = await loadTable();
  if (table !== undefined)
    playOnCover(figure, table, (key) => listMoves({ key, fen: `${key} 0 1` }));
}

async function loadTable(): Promise<CourseTable | undefined> {
  const loaded = new Promise((resolve) => addEventListener(tableLoaded, resolve, { once: true }));
  await loadScript(tableLoader);
  await loaded;
  return globalThis.courseTable;
}
