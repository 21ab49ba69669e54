import type { FuzzCase } from '../case.ts';
import { makeRandom, type Random } from '../random.ts';
import { arbitraryCourse } from './arbitrary-course.ts';
import { makeArchive } from './make-archive.ts';
import { mutate } from './mutate.ts';
import { pickSource } from './sources.ts';

/** The case of a number: the same for the same seed, whatever was tried before. */
export function makeCase(seed: number, number: number): FuzzCase {
  const random = makeRandom(seed, number);
  if (random.chance(0.15))
    return { target: 'archive', files: { 'games.pgn': makeArchive(random) } };
  const files = makeCourse(random);
  // What a disk holds is bytes.
  if (random.chance(0.1)) {
    return { target: 'folder', files: mapValues(files, (text) => asBytes(text, random)) };
  }
  const texts = mapValues(files, (text) => Buffer.from(text).toString());
  return { target: 'course', files: texts, settle: random.chance(0.5) };
}

function makeCourse(random: Random) {
  if (random.chance(0.5)) return mutate(pickSource(random), random);
  const files = random.sample(arbitraryCourse);
  return random.chance(0.5) ? files : mutate(files, random);
}

function mapValues(files: FuzzCase['files'], change: (text: string) => string): FuzzCase['files'] {
  return Object.fromEntries(Object.entries(files).map(([file, text]) => [file, change(text)]));
}

/** Mostly UTF-8; else another encoding, with or without its mark, or a byte that is wrong. */
function asBytes(text: string, random: Random): string {
  const utf8 = Buffer.from(text).toString('latin1');
  switch (random.below(12)) {
    case 0:
      return `\xEF\xBB\xBF${utf8}`;
    case 1:
      return Buffer.from(`\uFEFF${text}`, 'utf16le').toString('latin1');
    case 2:
      return Buffer.from(text, 'latin1').toString('latin1');
    case 3: {
      const at = random.below(utf8.length + 1);
      const wrong = random.pick(['\xFF', '\xC0\x80', '\xED\xA0\x80', '\0', '\xE2\x82', '\x80']);
      return utf8.slice(0, at) + wrong + utf8.slice(at);
    }
    default:
      return utf8;
  }
}
