import path from 'node:path';
import { FileRefusedError, openPlainFile, readPlainFile, readUpTo } from '../files/index.ts';
import { mediaKinds } from './media-kinds.ts';
import { findNameFault } from './name-fault.ts';
import type { MediaFault } from './types.ts';

/** So many bytes are looked at, of what is told by its beginning. */
const head = 1_000_000;
/** The largest SVG, in bytes: it is read whole (a judgement, no source). */
const largestSvg = 10_000_000;

/**
 * Why a file of `media/` is not published: its name, or that what is in it is not what the name says.
 * @param file relative to the course folder, with `/`
 */
export async function findMediaFault(
  folder: string,
  file: string,
): Promise<MediaFault | undefined> {
  const named = findNameFault(file);
  const kind = mediaKinds[path.extname(file).toLowerCase()];
  if (named !== undefined || kind === undefined) return named;
  try {
    // What a course has no files for is not loaded: that takes as long as a small check.
    if (kind.content === 'svg') {
      const { bytes, size } = await readPlainFile(folder, file, largestSvg);
      if (size > largestSvg) return tooLarge(file);
      const { findPictureFault } = await import('./picture-fault.ts');
      return findPictureFault(file, bytes);
    }
    const bytes = await readHead(folder, file);
    if (kind.content === 'text') return findTextFault(file, bytes);
    const { fileTypeFromBuffer } = await import('file-type');
    return findTypeFault(file, kind.types, await fileTypeFromBuffer(bytes));
  } catch (error) {
    if (!(error instanceof FileRefusedError)) throw error;
    return { message: `${file} cannot be published. ${error.message}`, hint: error.hint };
  }
}

function tooLarge(file: string): MediaFault {
  return {
    message: `${file} is not published: an SVG may have ${largestSvg / 1_000_000} MB.`,
    hint: 'Save it as a PNG.',
  };
}

function findTypeFault(
  file: string,
  types: readonly string[],
  found: { readonly ext: string; readonly mime: string } | undefined,
): MediaFault | undefined {
  if (found !== undefined && types.includes(found.mime)) return undefined;
  const ending = path.extname(file);
  if (found === undefined) {
    return {
      message: `${file} is not published: it does not begin as a ${ending} file does.`,
      hint: 'Save it again in the program that it comes from.',
    };
  }
  return {
    message: `${file} is not published: it is no ${ending} file but a .${found.ext} file.`,
    hint:
      `.${found.ext}` in mediaKinds
        ? `Rename it to ${path.basename(file, ending)}.${found.ext}.`
        : `Save it as a ${ending} file.`,
  };
}

/**
 * A text that a browser could take for something else, where a host does not say what it is: one that
 * begins with a tag, or holds bytes that are none of text (MIME Sniffing Standard, sections 3 and 7.1).
 */
function findTextFault(file: string, bytes: Uint8Array): MediaFault | undefined {
  const text = new TextDecoder('latin1').decode(bytes).replace(/^\u00ef\u00bb\u00bf/, '');
  if (/^\s*</.test(text)) {
    return {
      message: `${file} is not published: it begins with \`<\`, and some browsers would take it for a page.`,
      hint: 'Begin it with other words, or put it into a zip file.',
    };
  }
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the standard's binary data bytes.
  if (/[\x00-\x08\x0b\x0e-\x1a\x1c-\x1f]/.test(text)) {
    return {
      message: `${file} is not published: it is no text.`,
      hint: 'Save it as UTF-8 text, or give it the ending of what it is.',
    };
  }
  return undefined;
}

async function readHead(folder: string, file: string): Promise<Uint8Array> {
  const handle = await openPlainFile(folder, file);
  try {
    return await readUpTo(handle, head);
  } finally {
    await handle.close();
  }
}
