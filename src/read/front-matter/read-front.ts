import type { Root } from 'mdast';
import * as z from 'zod';
import type { FileText } from '../blocks/fence.ts';
import { learnWords } from '../blocks/learn.ts';
import { isPageFile } from '../documents.ts';
import type { Learn } from '../types.ts';
import { choicesOf } from '../yaml/choices.ts';
import { reservedIds } from './document-id.ts';
import { titleText } from './front-texts.ts';
import { type PageFront, pageChoicesOf, pageFrontOf, whereOf } from './page-front.ts';
import { type FrontMatter, type FrontMatterOptions, readFrontMatter } from './read-front-matter.ts';

const chapterFront = z.strictObject(
  {
    title: titleText('a text, the title of the chapter'),
    summary: z.string({ error: 'a text (in quotes if it contains `: `)' }).optional(),
    id: z
      .string({ error: 'letters, digits and hyphens, such as `main-line`' })
      .regex(/^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*$/u, {
        error: 'letters, digits and hyphens, such as `main-line`',
      })
      .refine((id) => !reservedIds.includes(id.toLowerCase()), {
        error: `another word, since the site has a page or folder of that name (${reservedIds.join(', ')})`,
      })
      .optional(),
    learn: z.enum(learnWords, { error: '`all`, `main` or `none`' }).optional(),
    draft: z.boolean({ error: '`true` or `false`' }).optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** What the front matter of a chapter may hold. */
export const chapterChoices = choicesOf(chapterFront);

const { learn: _, ...sharedFront } = chapterFront.shape;

const pageFront = pageFrontOf(sharedFront);

/** What the front matter of a page may hold. */
export const pageChoices = pageChoicesOf(pageFront);

interface Front {
  readonly title?: string | undefined;
  readonly summary?: string | undefined;
  readonly id?: string | undefined;
  readonly learn?: Learn | undefined;
  readonly draft?: boolean | undefined;
  /** Only for a page. */
  readonly page?: PageFront;
}

/** Reads the front matter of a chapter or a page; the path says which of them it is. */
export function readFront(
  body: Root,
  file: FileText,
  options: Pick<FrontMatterOptions<z.ZodObject>, 'demand' | 'report'>,
): FrontMatter<Front> {
  if (!isPageFile(file.file)) {
    return readFrontMatter(body, file, { ...options, schema: chapterFront, what: 'chapter' });
  }
  const { sound, textOf } = readFrontMatter(body, file, {
    ...options,
    schema: pageFront,
    what: 'page',
  });
  return { sound: { ...sound, page: whereOf(sound) }, textOf };
}
