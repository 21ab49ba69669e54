import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { counted } from '../../counted.ts';
import { keepResults } from '../../exercise/results.ts';
import { browserKeeper, openOwnStore } from '../../free/own-store.ts';
import type { PracticeCourse } from '../session/practice-course.ts';
import { knownHere } from './known-elsewhere.ts';
import { readProgressFile } from './progress-file.ts';
import type { Store } from './store.ts';

/** Takes in the file that a reader has chosen. @returns what to tell of it. */
export async function loadProgress(
  file: File,
  course: PracticeCourse,
  store: Store,
  words: PracticeWords['practice'],
): Promise<string> {
  let text: string;
  try {
    text = await file.text();
  } catch {
    return words.unreadable;
  }
  const read = readProgressFile(text, Date.now());
  if ('fault' in read) {
    const faults = {
      'not-progress': words.notProgress,
      'cut-short': words.cutShort,
      newer: words.newer,
    };
    return faults[read.fault];
  }
  const { title } = read;
  const own = read.course === course.table.course;
  // The course may have had another name when the file was saved.
  const items = own ? read.items : knownHere(read.items, course);
  if (!own && items.length === 0) return fill(words.otherCourse, { title });
  const taken = await store.merge(items);
  const solved = own ? keepResults(read.course, read.exercises) : 0;
  const notes = own ? openOwnStore(read.course, browserKeeper()).take(read.notes) : 0;
  const beside = [
    notes === 0 ? '' : ` ${counted(words.takenNotes, notes)}`,
    solved === 0 ? '' : ` ${counted(words.takenExercises, solved)}`,
  ].join('');
  if (taken.size === 0) return beside === '' ? words.notTaken : beside.trim();
  const mended = [...taken].filter((key) => read.mended.has(key)).length;
  const said = own
    ? counted(words.taken, taken.size)
    : fill(counted(words.takenOther, taken.size), { title });
  const corrected = mended === 0 ? '' : ` ${counted(words.mended, mended)}`;
  return said + corrected + beside;
}
