import * as z from 'zod';
import { piecesLanguages } from '../../chess/index.ts';
import { isLongId } from '../front-matter/front-texts.ts';
import { webAddressFault } from './web-address.ts';

/** What `course.yaml` and `shelf.yaml` have in common. */

export const text = (what: string) => z.string({ error: what }).trim().min(1, { error: what });

const idError = 'letters, digits and hyphens, such as `tarrasch-defence`';

export const courseId = z
  .string({ error: idError })
  .regex(/^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*$/u, { error: idError })
  .refine((id) => !isLongId(id), { error: 'shorter, since files are named by it' });

const languageError = 'a language tag such as `en` or `pt-BR`';

export const languageTag = z
  .string({ error: languageError })
  .refine(isLanguageTag, { error: languageError });

export const siteAddress = z
  .string({ error: 'a web address that begins with `https://`' })
  .check(({ value, issues }) => {
    const fault = webAddressFault(value);
    if (fault) issues.push({ code: 'custom', input: value, message: fault });
  })
  .transform((address) => address.replace(/\/+$/, ''));

export const notationSetting = z.enum(['letters', 'english', 'figurines'], {
  error: '`letters`, `english` or `figurines`',
});

const piecesWords = `the language of the letters: ${piecesLanguages.map((tag) => `\`${tag}\``).join(', ')}`;

export const piecesSetting = z.enum(piecesLanguages, { error: piecesWords });

/** Whether a text is a BCP 47 tag whose language is in use. */
export function isLanguageTag(tag: string): boolean {
  // Longer primary subtags are well-formed, but none is in use: `english` is no tag.
  if (!/^[a-z]{2,3}(?:-|$)/i.test(tag)) return false;
  try {
    return Intl.getCanonicalLocales(tag).length === 1;
  } catch {
    return false;
  }
}
