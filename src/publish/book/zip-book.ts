import { promisify } from 'node:util';
import { crc32, deflateRaw } from 'node:zlib';
import { x } from 'xastscript';
import { writeXml } from '../../render/index.ts';
import { type PackedFile, zipFiles } from './zip-files.ts';

const folder = 'EPUB';

export interface BookFile {
  /** Relative to the package document. */
  readonly path: string;
  /** A print of its content; what has none is packed each time. */
  readonly key?: string;
  /** Asked for where the file is not kept. */
  readonly content: () => string | Uint8Array;
}

/** Files of books as they were packed, by their keys. */
export interface PackedFiles {
  get(key: string): PackedFile | undefined;
  set(key: string, file: PackedFile): void;
}

/** More would hold the buffers of as many compressors at once. */
const atOnce = 8;

const deflate = promisify<Uint8Array, { readonly level: number }, Buffer>(deflateRaw);

/**
 * Packs the files of a book (EPUB 3.3, section 4): first `mimetype`, stored as it is; then where
 * the package document is; then the files. The same files give the same bytes.
 */
export async function zipBook(
  files: readonly BookFile[],
  packed: PackedFiles = new Map(),
): Promise<Uint8Array> {
  const whole: [path: string, file: PackedFile][] = [
    ['mimetype', store(Buffer.from('application/epub+zip'))],
    ['META-INF/container.xml', await pack(Buffer.from(container()))],
  ];
  const first = whole.length;
  const left = files.entries();
  const work = async () => {
    for (const [at, file] of left) {
      whole[first + at] = [`${folder}/${file.path}`, await packOnce(file, packed)];
    }
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return zipFiles(whole);
}

async function packOnce({ path, key, content }: BookFile, packed: PackedFiles) {
  const known = key === undefined ? undefined : packed.get(key);
  if (known !== undefined) return known;
  const made = content();
  const bytes = typeof made === 'string' ? Buffer.from(made) : made;
  // Pictures are packed already.
  const isPicture = /\.(?:png|jpe?g|gif|webp)$/.test(path);
  const file = isPicture ? store(bytes) : await pack(bytes);
  if (key !== undefined) packed.set(key, file);
  return file;
}

function store(bytes: Uint8Array): PackedFile {
  return { crc: crc32(bytes), size: bytes.length, isDeflated: false, bytes };
}

async function pack(bytes: Uint8Array): Promise<PackedFile> {
  const deflated = await deflate(bytes, { level: 6 });
  return { crc: crc32(bytes), size: bytes.length, isDeflated: true, bytes: deflated };
}

function container(): string {
  return writeXml(
    x(null, [
      x('container', { xmlns: 'urn:oasis:names:tc:opendocument:xmlns:container', version: '1.0' }, [
        x('rootfiles', [
          x('rootfile', {
            'full-path': `${folder}/package.opf`,
            'media-type': 'application/oebps-package+xml',
          }),
        ]),
      ]),
    ]),
  );
}
