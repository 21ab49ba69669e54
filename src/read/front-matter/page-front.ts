import * as z from 'zod';
import { type Choices, choicesOf } from '../yaml/choices.ts';
import { titleText } from './front-texts.ts';

/** Where every page of the site links to an author's page: above its text, below it, or nowhere. */
const pageLinks = ['head', 'foot', 'nowhere'] as const;

/** What the front matter of a page says beyond that of a chapter: where it is published. */
export interface PageFront {
  readonly in: (typeof pageLinks)[number];
  /** A shorter title, for menus. */
  readonly menu?: string;
  /** Whether letters end with its text or with a link to it; without a site always with its text. */
  readonly letter?: 'text' | 'link';
  /** Whether it follows the chapters in the e-book and the handout. */
  readonly book: boolean;
}

/** With more characters the head of a page becomes a list on phones (our judgement, no source). */
const longestMenu = 30;

/** YAML 1.2 knows `true` alone; authors write `yes`. */
const yesOrNo = z
  .union([z.enum(['yes', 'no']), z.boolean()], { error: '`yes` or `no`' })
  .transform((said) => said === true || said === 'yes');

const wherePublished = {
  in: z.enum(pageLinks, { error: '`head`, `foot` or `nowhere`' }).optional(),
  menu: z
    .string({ error: 'a text, the title of the page in a menu' })
    .trim()
    .min(1, { error: 'a text, the title of the page in a menu' })
    .max(longestMenu, { error: `a title of up to ${longestMenu} letters` })
    .optional(),
  letter: z
    .union([z.enum(['yes', 'link', 'no']), z.boolean()], { error: '`yes`, `link` or `no`' })
    .optional(),
  book: yesOrNo.optional(),
};

const where = z.object(wherePublished);

/**
 * The schema for the front matter of a page.
 * @param shared the fields that it has in common with that of a chapter.
 */
export function pageFrontOf<Shared extends z.ZodRawShape>(shared: Shared) {
  return z.strictObject(
    { ...shared, title: titleText('a text, the title of the page'), ...wherePublished },
    { error: 'a list of `name: value` lines' },
  );
}

export function pageChoicesOf(schema: z.ZodObject): Choices {
  const said = ['yes', 'no'];
  return { ...choicesOf(schema), letter: ['yes', 'link', 'no'], book: said };
}

/** The valid fields of a page's front matter, and defaults for the rest. */
export function whereOf(front: Partial<z.output<typeof where>>): PageFront {
  const { in: place = 'foot', menu, letter, book = false } = front;
  const isInLetters = letter === true || letter === 'yes';
  return {
    in: place,
    ...(menu !== undefined && { menu }),
    ...(letter === 'link' ? { letter } : isInLetters && { letter: 'text' }),
    book,
  };
}
