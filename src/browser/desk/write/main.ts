/** Only in `linewright dev`: writes into the chapter what its author plays on the board. */
import { freePlayLoader } from '../../../contract/free-play.ts';
import type { CourseBoard } from '../../board/course-board.ts';
import { loadScript } from '../../load-script.ts';
import { whenIdle } from '../../when-idle.ts';
import { shownVersion } from '../shown-version.ts';
import { writeExercises } from './write-exercises.ts';
import { WritingDesk } from './writing-desk.ts';

const page = {
  get version() {
    return shownVersion();
  },
  chapter: decodeURIComponent(location.pathname.split('/').pop() ?? '').replace(/\.html$/, ''),
};

addEventListener('DOMContentLoaded', () => {
  writeExercises(page);
  const board = document.querySelector<CourseBoard>('.reading .beside course-board');
  if (board === null) return;
  new WritingDesk(page, board);
  // In a published chapter this waits for the reader's first act.
  whenIdle(() => void loadScript(freePlayLoader).catch(() => {}));
});
