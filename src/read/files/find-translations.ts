import { compareNames } from '../../diagnostics/index.ts';
import { FileRefusedError, listFolder, type Refusal } from '../../files/index.ts';
import { isLanguageTag } from '../settings/setting-fields.ts';
import type { SourceFile, TranslationFiles } from '../types.ts';

/** What `findFiles` gives, to look into the course folder. */
export interface CourseFolder {
  /** Reports a file that is not read. */
  readonly report: (file: string, refusal: Refusal) => void;
  /** The files of a folder that end with `.md`, in order. */
  readonly list: (folder: string) => Promise<readonly string[]>;
  readonly read: (names: readonly string[]) => Promise<readonly (SourceFile | undefined)[]>;
}

const folderName = 'translations';

/** The translations of a course: a folder each, named by the tag of its language. */
export async function findTranslations(
  course: string,
  { report, list, read }: CourseFolder,
): Promise<TranslationFiles[]> {
  const inFolder = async (folder: string) => {
    try {
      return await listFolder(course, folder);
    } catch (error) {
      if (!(error instanceof FileRefusedError)) throw error;
      report(folder, error);
      return [];
    }
  };
  const found: TranslationFiles[] = [];
  for (const { name, isFolder } of await inFolder(folderName)) {
    const folder = `${folderName}/${name}`;
    if (name.startsWith('.') || !isFolder) continue;
    if (!isLanguageTag(name)) {
      report(folder, {
        message: `The folder \`${name}\` is named by no language.`,
        hint: 'Name it by a language tag, such as `de` or `pt-BR`.',
      });
      continue;
    }
    const inner = new Map((await inFolder(folder)).map((entry) => [entry.name, entry.isFolder]));
    const texts = async (sub: string) =>
      inner.get(sub) === true ? (await read(await list(`${folder}/${sub}`))).filter(isRead) : [];
    const one = async (file: string) =>
      inner.get(file) === false ? (await read([`${folder}/${file}`]))[0] : undefined;
    const [settings, origin] = [await one('course.yaml'), await one('origin.json')];
    found.push({
      tag: name,
      folder,
      ...(settings && { settings }),
      chapters: await texts('chapters'),
      pages: await texts('pages'),
      news: await texts('news'),
      ...(origin && { origin }),
    });
  }
  return found.sort((a, b) => compareNames(a.tag, b.tag));
}

function isRead(file: SourceFile | undefined): file is SourceFile {
  return file !== undefined;
}
