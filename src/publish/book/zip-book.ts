import { strToU8, type Zippable, zipSync } from 'fflate';
import { x } from 'xastscript';
import { writeXml } from '../../render/index.ts';

const folder = 'EPUB';

/**
 * Packs the files of a book (EPUB 3.3, section 4): first `mimetype`, stored as it is; then where
 * the package document is; then the files. No date of packing goes in.
 */
export function zipBook(
  files: readonly (readonly [path: string, content: string | Uint8Array])[],
): Uint8Array {
  const zip: Zippable = {
    mimetype: [strToU8('application/epub+zip'), { level: 0 }],
    'META-INF/container.xml': strToU8(container()),
  };
  for (const [path, content] of files) {
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    // Pictures are packed already.
    const packed = /\.(?:png|jpe?g|gif|webp)$/.test(path);
    zip[`${folder}/${path}`] = packed ? [bytes, { level: 0 }] : bytes;
  }
  // Months count from 0: the first day that a ZIP file can tell, by the local clock that fflate reads.
  return zipSync(zip, { level: 9, mtime: new Date(1980, 0, 1) });
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
