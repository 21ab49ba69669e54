import * as z from 'zod';
import { choicesOf } from './choices.ts';
import { titleText } from './front-texts.ts';

/** Where every page of the site leads to a page of the author's: above its text, below it, or nowhere. */
export const pageLinks = ['head', 'foot', 'nowhere'] as const;

/** What the front matter of a page says of where it is published, beside what a chapter may say. */
export interface PageFront {
  readonly in: (typeof pageLinks)[number];
  /** Its title where room is short. */
  readonly menu?: string;
  /** Whether letters end with it. */
  readonly letter: boolean;
  /** Whether the e-book and the handout have it behind the chapters. */
  readonly book: boolean;
}

/** More letters make the head of a page on a phone a list (a judgement, no source). */
const longestMenu = 30;

/** YAML 1.2 knows `true` alone; authors write `yes`. */
const yesOrNo = z
  .enum(['yes', 'no'], { error: '`yes` or `no`' })
  .or(z.boolean())
  .transform((said) => said === true || said === 'yes');

const wherePublished = {
  in: z.enum(pageLinks, { error: '`head`, `foot` or `nowhere`' }).optional(),
  menu: z
    .string({ error: 'a text, the title of the page in a menu' })
    .trim()
    .min(1, { error: 'a text, the title of the page in a menu' })
    .max(longestMenu, { error: `a title of up to ${longestMenu} letters` })
    .optional(),
  letter: yesOrNo.optional(),
  book: yesOrNo.optional(),
};

/** What the front matter of a page may say. @param shared what it has in common with that of a chapter. */
export function pageFrontOf<Shared extends z.ZodRawShape>(shared: Shared) {
  return z.strictObject(
    { ...shared, title: titleText('a text, the title of the page'), ...wherePublished },
    { error: 'a list of `name: value` lines' },
  );
}

export function pageChoicesOf(schema: z.ZodObject) {
  const said = ['yes', 'no'];
  return { ...choicesOf(schema), letter: said, book: said };
}

/** What is sound of a page's front matter, with what holds where it says nothing. */
export function whereOf(front: Readonly<Record<string, unknown>>): PageFront {
  const { in: link, menu, letter, book } = z.object(wherePublished).parse(front);
  return {
    in: link ?? 'foot',
    ...(menu !== undefined && { menu }),
    letter: letter ?? false,
    book: book ?? false,
  };
}
