import { buffer } from 'node:stream/consumers';
import { x } from 'xastscript';
import { ZipFile } from 'yazl';
import { writeXml } from '../../render/index.ts';

const folder = 'EPUB';

/**
 * Of every file: no date of packing goes in but the first day that a ZIP file can tell, by the local
 * clock that yazl reads; months count from 0. The first file may have no field of another date (OCF 4.2).
 */
const always = { mtime: new Date(1980, 0, 1), mode: 0o100644, forceDosTimestamp: true };

/**
 * Packs the files of a book (EPUB 3.3, section 4): first `mimetype`, stored as it is; then where
 * the package document is; then the files. The same files give the same bytes.
 */
export async function zipBook(
  files: readonly (readonly [path: string, content: string | Uint8Array])[],
): Promise<Uint8Array> {
  const zip = new ZipFile();
  zip.addBuffer(Buffer.from('application/epub+zip'), 'mimetype', { ...always, compress: false });
  zip.addBuffer(Buffer.from(container()), 'META-INF/container.xml', always);
  for (const [path, content] of files) {
    const bytes = typeof content === 'string' ? Buffer.from(content) : asBuffer(content);
    // Pictures are packed already.
    const packed = /\.(?:png|jpe?g|gif|webp)$/.test(path);
    zip.addBuffer(bytes, `${folder}/${path}`, { ...always, compressionLevel: packed ? 0 : 6 });
  }
  zip.end();
  return buffer(zip.outputStream);
}

/** The same bytes, not a copy. */
function asBuffer({ buffer, byteOffset, byteLength }: Uint8Array): Buffer {
  return Buffer.from(buffer, byteOffset, byteLength);
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
