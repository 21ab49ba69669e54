import type { Page } from '../../model/index.ts';
import type { Parts } from '../../render/index.ts';
import type { CoursePage, OwnHead, OwnPage, SiteFrame } from '../site-data.ts';
import { pagePart } from './chapter-page.ts';
import { page } from './rendered-site.ts';
import type { SitePrints } from './site-prints.ts';

/** Of a page of text with fewer sections a list helps nobody (a judgement, no source). */
const worthListing = 4;

/** The pages of the author's that are no chapters, each with what indexes of words need to know of it. */
export function pagesOfAuthor(
  pages: readonly Page[],
  { parts, prints }: { readonly parts: Parts; readonly prints: SitePrints | undefined },
) {
  return pages.map((own) => {
    const around = { ...headOf(own), isText: own.blocks.length === 0 };
    const shown = (): OwnPage => {
      const text = parts.of(pagePart, own);
      const isLong = text.board !== undefined || text.sections.length >= worthListing;
      return { ...around, ...text, sections: isLong ? text.sections : [] };
    };
    return {
      id: own.id,
      page: shown,
      print: prints?.ofText(own),
      sitePage: page(
        'own',
        `${own.id}.html`,
        () => ({ own: shown() }),
        prints?.ofChapter(own, around),
      ),
    };
  });
}

/** Where every page of the site leads to them; nothing where there are none. */
export function linksToPages(pages: readonly Page[]): Pick<SiteFrame, 'own'> {
  const at = (link: Page['page']['in']): CoursePage[] =>
    pages.flatMap(({ id, title, page }) =>
      page.in === link ? [{ file: `${id}.html`, title: page.menu ?? title }] : [],
    );
  const own = { head: at('head'), foot: at('foot') };
  return own.head.length + own.foot.length === 0 ? {} : { own };
}

function headOf({ id, title, summary, draft, language }: Page): OwnHead {
  return {
    id,
    title,
    ...(summary !== undefined && { summary }),
    ...(draft && { draft }),
    ...(language !== undefined && { language }),
  };
}
