import { wordFolders } from '../../contract/word-folders.ts';
import { mayRunWasm } from './may-run-wasm.ts';

/** The host's policy or the browser lets no WebAssembly run, which the index is made of. */
export class WasmForbidden extends Error {}

/** What is used of the index's own script, which the page loads when it is first asked for. */
interface IndexScript {
  options(options: { readonly excerptLength: number }): Promise<void>;
  init(): Promise<void>;
  mergeIndex(address: string): Promise<void>;
  search(
    words: string,
  ): Promise<{ readonly results: readonly { data(): Promise<ChapterFound> }[] }>;
}

/** A chapter that has the words. */
export interface ChapterFound {
  readonly raw_url: string;
  readonly meta: { readonly title?: string };
  readonly anchors: readonly { readonly id: string; readonly location: number }[];
  /** Its parts from heading to heading. */
  readonly sub_results: readonly PartFound[];
}

export interface PartFound {
  readonly title: string;
  /** Names it among the parts of all chapters. */
  readonly url: string;
  /** Its heading; absent above the first. */
  readonly anchor?: { readonly id: string; readonly location: number };
  /** The text around the words as HTML, where they are in `<mark>`. */
  readonly excerpt: string;
  /** Where the words stand, counted in words of the chapter. */
  readonly locations: readonly number[];
}

export const excerptWords = 24;

export interface IndexPlace {
  /** How many chapters the course has, which tells the parts. */
  readonly chapters: number;
  /** Address of the course's site, where the page is of another. */
  readonly at?: string | undefined;
  /** See `mayRunWasm`. */
  readonly probe: string;
}

/** By the addresses of courses. */
const scripts = new Map<string, Promise<IndexScript>>();
let mayRun: Promise<boolean> | undefined;

/**
 * Searches the index of a course, all its parts. The script and all it fetches lie in the site itself.
 * @throws where the index is missing or cannot run; WasmForbidden where the host must allow it.
 */
export async function searchIndex(
  words: string,
  place: IndexPlace,
): Promise<readonly { data(): Promise<ChapterFound> }[]> {
  const { at = '' } = place;
  const script = scripts.get(at) ?? load(place);
  scripts.set(at, script);
  try {
    return (await (await script).search(words)).results;
  } catch (error) {
    scripts.delete(at);
    throw error;
  }
}

async function load({ chapters, at = '', probe }: IndexPlace): Promise<IndexScript> {
  mayRun ??= mayRunWasm(probe);
  if (!(await mayRun)) throw new WasmForbidden();
  const [first, ...others] = wordFolders(chapters).map(
    (folder) => new URL(`${at}${folder}/`, document.baseURI).href,
  );
  const address = `${first}pagefind.js`;
  const loaded = (await import(address)) as IndexScript;
  await loaded.options({ excerptLength: excerptWords });
  await loaded.init();
  await Promise.all(others.map((folder) => loaded.mergeIndex(folder)));
  return loaded;
}
