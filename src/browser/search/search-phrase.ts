import { type ChapterFound, type IndexPlace, type PartFound, searchIndex } from './word-index.ts';

/** So many chapters are searched for their parts. */
const chaptersRead = 30;

export interface TextFound {
  /** In all, though only the first are read. */
  readonly count: number;
  readonly chapters: readonly ChapterFound[];
  /** Whether parts with all words in a row come before others. */
  readonly phraseFirst: boolean;
}

/**
 * Searches for words as a whole phrase, and for the words one by one: the phrase comes first. In quotation marks
 * nothing but the phrase counts.
 * @throws as `searchIndex`
 */
export async function searchText(query: string, place: IndexPlace): Promise<TextFound> {
  const [, quoted] = /^["“„«](.+?)["”“»]?$/.exec(query) ?? [];
  if (quoted !== undefined) {
    const results = await searchIndex(`"${quoted}"`, place);
    return { count: results.length, chapters: await read(results), phraseFirst: false };
  }
  const plain = query.replaceAll('"', ' ');
  const results = await searchIndex(plain, place);
  const chapters = await read(results);
  if (!/\S\s+\S/.test(plain)) return { count: results.length, chapters, phraseFirst: false };
  const phrase = await read(await searchIndex(`"${plain}"`, place));
  return {
    count: results.length,
    chapters: merge(phrase, chapters),
    phraseFirst: phrase.length > 0 && chapters.some((each) => !isWhole(each, phrase)),
  };
}

function read(results: Awaited<ReturnType<typeof searchIndex>>): Promise<ChapterFound[]> {
  return Promise.all(results.slice(0, chaptersRead).map((result) => result.data()));
}

/** Chapters with the phrase first, in each the parts with the phrase first; none of them twice. */
function merge(phrase: readonly ChapterFound[], all: readonly ChapterFound[]): ChapterFound[] {
  const whole = phrase.map((chapter) => {
    const other = all.find(({ raw_url }) => raw_url === chapter.raw_url);
    const parts = other?.sub_results.filter((part) => !has(chapter, part)) ?? [];
    return { ...chapter, sub_results: [...chapter.sub_results, ...parts] };
  });
  const known = new Set(phrase.map(({ raw_url }) => raw_url));
  return [...whole, ...all.filter(({ raw_url }) => !known.has(raw_url))];
}

/** Whether all parts of a chapter have the phrase. */
function isWhole(chapter: ChapterFound, phrase: readonly ChapterFound[]): boolean {
  const same = phrase.find(({ raw_url }) => raw_url === chapter.raw_url);
  return same !== undefined && chapter.sub_results.every((part) => has(same, part));
}

function has({ sub_results }: ChapterFound, { url }: PartFound): boolean {
  return sub_results.some((part) => part.url === url);
}
