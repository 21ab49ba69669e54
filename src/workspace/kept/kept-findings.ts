import type { CheckedChapter } from '../../check/index.ts';
import { heldFor, holdFor, knowPrint, printSummary } from './held-for.ts';
import type { KeptChapter } from './kept-chapter.ts';
import { loadLines, saveLines } from './kept-lines.ts';

/** What earlier processes kept of a course, except its syntax. */
export async function loadKept(cache: string, course: string): Promise<readonly KeptChapter[]> {
  return fromLines(await loadLines(cache, course));
}

export async function saveKept(
  cache: string,
  course: string,
  chapters: Iterable<KeptChapter>,
): Promise<void> {
  await saveLines(cache, course, toLines([...chapters]));
}

/** In the first line the answers for which all findings hold, then a line a chapter. */
export function toLines(chapters: readonly KeptChapter[]): readonly Buffer[] {
  return [Buffer.from(answersOf(chapters)), ...chapters.map(lineOf)];
}

export function fromLines([answers, ...lines]: readonly Buffer[]): KeptChapter[] {
  const chapters = lines.map(parseChapter);
  const known = answers?.toString() ?? '';
  if (known !== '') for (const { checked } of chapters) holdFor(checked, known);
  return chapters;
}

/** The answers for which all findings hold; empty where some were not found with the others. */
function answersOf(chapters: readonly KeptChapter[]): string {
  const answers = new Set(
    chapters.flatMap(({ checked }) => (checked.unsure ? [] : [heldFor(checked) ?? ''])),
  );
  const [first = ''] = answers;
  return answers.size === 1 ? first : '';
}

type Asked = CheckedChapter['asked'];

/** A question with a position of the chapter, as most are, as the number of a node. */
type ShortAsked = readonly [kind: Asked[number][0], about: string | number, print?: string];

/** Of a line: all but the questions that its findings asked, which stand behind a tab, since few of them are asked again. */
interface Head extends Omit<KeptChapter, 'checked' | 'live'> {
  /** `printSummary` */
  readonly print: string;
  readonly checked: Omit<CheckedChapter, 'asked'>;
}

/** Lines as loaded: most are written again unchanged. */
const loaded = new WeakMap<KeptChapter, Buffer>();

function lineOf(chapter: KeptChapter): Buffer {
  return loaded.get(chapter) ?? makeLine(chapter);
}

function makeLine({ live: _, ...chapter }: KeptChapter): Buffer {
  const numbers = new Map(keysOf(chapter).map((key, index) => [key, index]));
  const { asked, ...checked } = chapter.checked;
  const short = asked.map(([kind, about, print]): ShortAsked => {
    const said = numbers.get(about) ?? about;
    return print === '' ? [kind, said] : [kind, said, print];
  });
  const head: Head = { print: printSummary(chapter.summary), ...chapter, checked };
  return Buffer.from(`${JSON.stringify(head)}\t${JSON.stringify(short)}`);
}

function parseChapter(line: Buffer): KeptChapter {
  const tab = line.indexOf('\t');
  const { print, ...head } = JSON.parse(line.toString('utf8', 0, tab)) as Head;
  const { findings, ...rest } = head.checked;
  let known: Asked | undefined;
  const checked: CheckedChapter = {
    findings,
    get asked() {
      known ??= parseAsked(line.toString('utf8', tab + 1), keysOf(head));
      return known;
    },
    ...rest,
  };
  const whole = { ...head, checked };
  knowPrint(whole.summary, print);
  loaded.set(whole, line);
  return whole;
}

function parseAsked(text: string, keys: readonly string[]): Asked {
  return (JSON.parse(text) as ShortAsked[]).map(([kind, about, print = '']) => [
    kind,
    typeof about === 'number' ? (keys[about] ?? '') : about,
    print,
  ]);
}

function keysOf({ summary }: Pick<KeptChapter, 'summary'>): string[] {
  return summary.blocks.flatMap(({ nodes }) => nodes.map(({ key }) => key));
}
