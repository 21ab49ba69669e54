import { createHash } from 'node:crypto';
import type { Element } from 'hast';
import { type BoardPicture, boardJob, type Inks, makePngs } from '../draw/index.ts';
import { element } from '../render/index.ts';

/** The boards that a text shows, as picture files. */
export interface Pictures {
  /** A board as an image in the text; what it shows is in its alternative text. */
  readonly board: (picture: BoardPicture) => Element;
  /** In CSS pixels. */
  readonly size: { readonly width: number; readonly height: number };
  /** All that were asked for in the order of the text: their addresses there, and a name of what each shows. */
  readonly list: () => readonly { readonly src: string; readonly key: string }[];
  /** Draws them, or those of the given keys: PNG files by their addresses in the text. */
  readonly draw: (
    cacheDir?: string,
    isWanted?: (key: string) => boolean,
  ) => Promise<ReadonlyMap<string, Uint8Array>>;
}

/** Width of a board in CSS pixels; the file has twice as many, for dense screens and print. */
const width = 320;
const scale = 2;
/** A book has hundreds: its files may be a twentieth larger where that takes a third of the time. */
const level = 7;

/**
 * Collects boards. Their files are named by what they show, so that a picture which a mail program
 * has kept, or a reader's service has stored, never shows another position after a revision.
 * @param inks a course's own.
 */
export function collectPictures(folder: string, inks?: Inks): Pictures {
  const jobs = new Map<string, ReturnType<typeof boardJob>>();
  const board = ({ title, desc, ...picture }: BoardPicture): Element => {
    const job = boardJob(picture, { width, scale, level, inks });
    const name = createHash('sha256').update(job.key).digest('hex').slice(0, 12);
    const src = `${folder}/board-${name}.png`;
    jobs.set(src, job);
    const alt = desc ?? title ?? '';
    return element('img', { className: ['board'], src, alt, width, height: width }, []);
  };
  const list = () => [...jobs].map(([src, { key }]) => ({ src, key }));
  const draw: Pictures['draw'] = async (cacheDir, isWanted = () => true) => {
    const wanted = [...jobs].filter(([, { key }]) => isWanted(key));
    const paths = wanted.map(([path]) => path);
    const files = new Map<string, Uint8Array>();
    await makePngs(
      wanted.map(([, job]) => job),
      (index, png) => {
        const path = paths[index];
        if (path !== undefined) files.set(path, png);
      },
      { cache: cacheDir },
    );
    // In the order of the text, whichever was drawn first.
    return new Map(
      paths.flatMap((path) => {
        const png = files.get(path);
        return png === undefined ? [] : [[path, png]];
      }),
    );
  };
  return { board, size: { width, height: width }, list, draw };
}
