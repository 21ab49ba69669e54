import type { RootContent } from 'hast';
import { visit } from 'unist-util-visit';
import type { CheckedCourse } from '../../check/index.ts';
import type { Diagnostic } from '../../diagnostics/index.ts';
import type { BoardPicture } from '../../draw/index.ts';
import { decodeAddress } from '../../model/index.ts';
import { courseInks, type Medium } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';
import { pictureFindings } from '../picture-findings.ts';
import { collectPictures } from '../pictures.ts';
import { checkAddresses, checkUnsubscribe } from './check-addresses.ts';
import { chooseText, type LetterChoice } from './choose-text.ts';
import { letterLong } from './letter-findings.ts';
import { letterFrame } from './letter-frame.ts';
import { mailColours } from './mail-css.ts';
import { makeMailHtml } from './mail-html.ts';
import { type MailPicture, mailTree } from './mail-tree.ts';
import { contentIdOf, makeMessage } from './message.ts';
import { linksAtFoot, pagesAtFoot, withPages } from './pages-at-foot.ts';
import { fitForText, makePlainText } from './plain-text.ts';
import { letterPictures, readMedia } from './read-media.ts';
import { renderText } from './render-text.ts';
import { lettersInWords, textBoard } from './text-board.ts';

export interface LetterOptions {
  /** The course's folder, whose pictures the chapters show. */
  readonly folder: string;
  readonly date: Date;
  /** Address of the course's site, where links lead; else the course's own setting. */
  readonly site?: string | undefined;
  /** Address of a folder that will hold the pictures; without it they are attached. */
  readonly images?: string | undefined;
  readonly subject?: string | undefined;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  /** Where a reader leaves the list: an https or mailto address. */
  readonly unsubscribe?: string | undefined;
  /** Whether that address takes a POST from a mail program's own button (RFC 8058). */
  readonly oneClick?: boolean | undefined;
  /** Who sends it, and where he can be reached by post. */
  readonly sender?: string | undefined;
  /** Folder of finished images, kept between runs. */
  readonly cacheDir?: string | undefined;
}

export interface Letter {
  /** A name for its folder, after what it tells. */
  readonly name: string;
  readonly html: string;
  readonly text: string;
  /** The whole message: what an `.eml` file holds. */
  readonly message: Uint8Array;
  /** By their paths beside the HTML. */
  readonly pictures: ReadonlyMap<string, { readonly type: string; readonly bytes: Uint8Array }>;
  readonly findings: readonly Diagnostic[];
}

/**
 * A chapter, a part of one, named positions or news as a letter.
 * @throws PublishError for what the course does not have, and for addresses that are none.
 */
export async function makeLetter(
  { course }: CheckedCourse,
  choice: LetterChoice,
  options: LetterOptions,
): Promise<Letter> {
  checkAddresses('from', options.from);
  checkAddresses('to', options.to);
  checkUnsubscribe(options.unsubscribe, options.oneClick);
  const { settings } = course;
  const strings = stringsFor(settings.language, settings.notation);
  const text = chooseText(course, choice);
  const site = options.site ?? settings.site;
  const atFoot = pagesAtFoot(course, site, text.chapters);
  const frame = letterFrame(course, text, {
    site,
    page: site && text.page && `${site}/${text.page}`,
    unsubscribe: options.unsubscribe,
    sender: options.sender,
    pages: linksAtFoot(atFoot.links, site),
  });
  const shown = { chapters: [...text.chapters, ...atFoot.texts] };
  const render = (board: Medium['board']) => ({
    content: renderText(course, text, board, site),
    pages: atFoot.texts.map(
      (page) => [page, renderText(course, { chapters: [page] }, board, site)] as const,
    ),
  });
  const subject = options.subject ?? `${settings.title}: ${text.title}`;

  const boards = collectPictures('images', courseInks(course, 'two-tone'));
  const media = await readMedia(shown, options.folder);
  const { content, pages } = render(boards.board);
  const drawn = await boards.draw(options.cacheDir);
  const pictures = new Map([
    ...[...drawn].map(([path, bytes]) => [path, { type: 'image/png', bytes }] as const),
    ...[...media.values()].map(({ path, type, bytes }) => [path, { type, bytes }] as const),
  ]);
  const preview = text.summary?.trim() ?? beginningOf(content);
  const htmlWith = (addressOf: (path: string) => string) => {
    const pictureAt = (url: string): MailPicture | undefined => {
      const size = drawn.has(url) ? { path: url, ...boards.size } : media.get(decodeAddress(url));
      return size && { src: addressOf(size.path), width: size.width, height: size.height };
    };
    const colours = mailColours(course.theme?.look);
    const letter = { language: settings.language, subject, preview, colours };
    const fit = (nodes: readonly RootContent[]) => mailTree(nodes, pictureAt);
    return makeMailHtml(letter, withPages(frame, pages, fit), fit(content));
  };

  let hasBoards = false;
  const letters = (picture: BoardPicture) => {
    hasBoards = true;
    return textBoard(picture, strings);
  };
  const plain = render(letters);
  const legend = hasBoards ? strings.letter.textBoards(lettersInWords(strings)) : undefined;
  const inWords = withPages(frame, plain.pages, fitForText);
  const words = makePlainText(inWords, legend, plain.content);

  const { images, from, to, date, unsubscribe: address, oneClick: takesPost = false } = options;
  const fetched = (path: string) => `${images}/${path.replace(/^images\//, '')}`;
  const html = htmlWith(images === undefined ? (path) => path : fetched);
  const attached = images === undefined ? htmlWith((path) => `cid:${contentIdOf(path)}`) : html;
  const message = await makeMessage({
    subject,
    from,
    to,
    unsubscribe: address === undefined ? undefined : { address, takesPost },
    date,
    text: words,
    html: attached,
    pictures: images === undefined ? pictures : new Map(),
  });
  const longer = attached.length > html.length ? attached : html;
  const findings = [
    ...letterLong(longer, text),
    ...pictureFindings(shown.chapters, letterPictures, {
      rule: 'letter-picture',
      readers: 'mail programs',
    }),
  ];
  return { name: text.name, html, text: words, message, pictures, findings };
}

/** The first words of the text. */
function beginningOf(content: readonly RootContent[]): string {
  const paragraph = content.find((node) => node.type === 'element' && node.tagName === 'p');
  let words = '';
  visit(paragraph ?? { type: 'root', children: [...content] }, 'text', ({ value }) => {
    words += value;
  });
  const [start = ''] = /^.{0,140}(?=\s|$)/s.exec(words.replaceAll(/\s+/g, ' ').trim()) ?? [];
  return start;
}

/** Where the text stands on the site, if it stands on one page of it. */
