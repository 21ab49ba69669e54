import path from 'node:path/posix';
import { mediaKinds } from './media-kinds.ts';
import type { MediaFault } from './types.ts';

/**
 * Endings that a server may obey within a name too: by the documentation of Apache's mod_mime, "Files
 * with Multiple Extensions", `a.php.png` can be run as a program and `a.shtml.png` as a page. The list
 * is common practice, no source.
 */
const obeyed = new Set(
  (
    'asa asax ascx asmx asp aspx bat cer cfm cgi cmd dll exe fcgi hta htc htm html jar js jsp jspx ' +
    'lua mjs phar php php3 php4 php5 php7 php8 phps pht phtml pl py rb rhtml sh shtm shtml ssi stm ' +
    'svgz swf var wasm xht xhtml xml xsl xslt'
  ).split(' '),
);

const kinds = Object.keys(mediaKinds)
  .map((kind) => kind.slice(1))
  .join(', ');

/** Why a file of this name is not published from `media/`, whatever is in it. */
export function findNameFault(file: string): MediaFault | undefined {
  const hint = `Files of these kinds are published: ${kinds}. Put others into a zip file.`;
  if (file.split('/').some((part) => part.startsWith('.'))) {
    return {
      message: `${file} is not published: servers keep their settings in files and folders whose names begin with a dot.`,
      hint: 'Rename it without the dot.',
    };
  }
  const ending = path.extname(file);
  if (!(ending.toLowerCase() in mediaKinds)) {
    return {
      message: ending
        ? `${file} is not published: files that end with ${ending} are none of the kinds that a course hands out.`
        : `${file} is not published: its name has no ending that tells its kind.`,
      hint,
    };
  }
  const parts = path.basename(file).toLowerCase().split(/[.;:]/);
  const inner = parts.slice(1, -1).find((part) => obeyed.has(part.trim()));
  if (inner === undefined) return undefined;
  return {
    message: `${file} is not published: some servers would take it for a file that ends with .${inner}.`,
    hint: `Rename it without the \`.${inner}\`.`,
  };
}
