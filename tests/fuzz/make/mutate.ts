import type { Files } from '../case.ts';
import type { Random } from '../random.ts';
import { mutateFiles } from './mutate-files.ts';
import { mutations } from './mutations.ts';

/** A course with a few changes such as a slip, a merge, a paste or malice makes. */
export function mutate(files: Files, random: Random): Files {
  let changed: Record<string, string> = { ...files };
  const times = 1 + (random.chance(0.5) ? 0 : random.below(8));
  for (let time = 0; time < times; time++) {
    if (random.chance(0.06)) {
      changed = mutateFiles(changed, random);
      continue;
    }
    const file = pickFile(changed, random);
    if (file === undefined) continue;
    const text = changed[file] ?? '';
    const others = Object.values(changed);
    changed[file] = random.pick(mutations)({ text, others, random });
  }
  return changed;
}

/** Chapters are where courses are written. */
function pickFile(files: Files, random: Random): string | undefined {
  const names = Object.keys(files).filter((file) => !file.startsWith('media/'));
  const chapters = names.filter((file) => file.startsWith('chapters/'));
  const list = chapters.length > 0 && random.chance(0.8) ? chapters : names;
  return list.length === 0 ? undefined : random.pick(list);
}
