import type { KeptChapter } from './kept-chapter.ts';
import { loadLines, saveLines } from './kept-lines.ts';

/** What earlier processes kept of a course, except its syntax. */
export async function loadKept(cache: string, course: string): Promise<readonly KeptChapter[]> {
  return (await loadLines(cache, course)).map(parseChapter);
}

export async function saveKept(
  cache: string,
  course: string,
  chapters: Iterable<KeptChapter>,
): Promise<void> {
  await saveLines(cache, course, [...chapters].map(lineOf));
}

type Asked = KeptChapter['checked']['asked'][number];

/** A question with a position of the chapter, as most are, as the number of a node. */
type ShortAsked = readonly [kind: Asked[0], about: string | number, print?: string];

/** Lines as loaded: most are written again unchanged. */
const loaded = new WeakMap<KeptChapter, string>();

function lineOf(chapter: KeptChapter): string {
  return loaded.get(chapter) ?? makeLine(chapter);
}

function makeLine({ live: _, ...chapter }: KeptChapter): string {
  const numbers = new Map(keysOf(chapter).map((key, index) => [key, index]));
  const asked = chapter.checked.asked.map(([kind, about, print]): ShortAsked => {
    const short = numbers.get(about) ?? about;
    return print === '' ? [kind, short] : [kind, short, print];
  });
  return JSON.stringify({ ...chapter, checked: { ...chapter.checked, asked } });
}

function parseChapter(line: string): KeptChapter {
  const chapter = JSON.parse(line) as KeptChapter;
  const keys = keysOf(chapter);
  const short = chapter.checked.asked as readonly ShortAsked[];
  const asked = short.map(
    ([kind, about, print = '']): Asked => [
      kind,
      typeof about === 'number' ? (keys[about] ?? '') : about,
      print,
    ],
  );
  const whole = { ...chapter, checked: { ...chapter.checked, asked } };
  loaded.set(whole, line);
  return whole;
}

function keysOf({ summary }: Pick<KeptChapter, 'summary'>): string[] {
  return summary.blocks.flatMap(({ nodes }) => nodes.map(({ key }) => key));
}
