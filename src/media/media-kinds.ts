/**
 * The kinds of files that a course publishes from `media/`, by their ending: what a teacher shows or
 * hands out, and never what a browser or a server runs as a page or a program. `types` are those that
 * the first bytes of such a file tell, in the words of the package file-type; text has no such bytes.
 */
export type MediaKind =
  | { readonly content: 'bytes'; readonly types: readonly string[] }
  | { readonly content: 'text' }
  | { readonly content: 'svg' };

const bytes = (...types: readonly string[]): MediaKind => ({ content: 'bytes', types });
const office = 'application/vnd.openxmlformats-officedocument';
const openDocument = 'application/vnd.oasis.opendocument';

export const mediaKinds: Readonly<Record<string, MediaKind>> = {
  '.avif': bytes('image/avif'),
  '.gif': bytes('image/gif'),
  '.jpeg': bytes('image/jpeg'),
  '.jpg': bytes('image/jpeg'),
  '.png': bytes('image/png', 'image/apng'),
  '.svg': { content: 'svg' },
  '.webp': bytes('image/webp'),
  '.csv': { content: 'text' },
  '.docx': bytes(`${office}.wordprocessingml.document`),
  '.epub': bytes('application/epub+zip'),
  '.odp': bytes(`${openDocument}.presentation`),
  '.ods': bytes(`${openDocument}.spreadsheet`),
  '.odt': bytes(`${openDocument}.text`),
  '.pdf': bytes('application/pdf'),
  '.pgn': { content: 'text' },
  '.pptx': bytes(`${office}.presentationml.presentation`),
  '.txt': { content: 'text' },
  '.xlsx': bytes(`${office}.spreadsheetml.sheet`),
  '.zip': bytes('application/zip'),
  '.flac': bytes('audio/flac'),
  '.m4a': bytes('audio/x-m4a', 'audio/mp4'),
  '.mp3': bytes('audio/mpeg'),
  '.mp4': bytes('video/mp4', 'video/x-m4v'),
  '.ogg': bytes('audio/ogg', 'audio/ogg; codecs=opus', 'video/ogg'),
  '.opus': bytes('audio/ogg; codecs=opus'),
  '.wav': bytes('audio/wav'),
  '.webm': bytes('video/webm'),
  // For a theme.
  '.otf': bytes('font/otf'),
  '.ttf': bytes('font/ttf'),
  '.woff': bytes('font/woff'),
  '.woff2': bytes('font/woff2'),
};
