import { ident, tokenize, tokenTypes, url as urlToken } from 'css-tree';
import { isPassiveData } from './passive-data.ts';
import { shorten } from './shorten.ts';

/** Functions of CSS that take addresses (CSS Values 4, "url()" and "src()"; CSS Images 4). */
const takesAddress = /^(?:url|src|image|(?:-webkit-)?image-set|(?:-webkit-)?cross-fade)$/i;

/**
 * What a style sheet, or a value in one, fetches from elsewhere: `@import`, or an address that is
 * neither a part of the same file nor a picture or a font in itself.
 */
export function findFetches(css: string): string[] {
  const found: string[] = [];
  const look = (address: string) => {
    const text = address.trim();
    if (text === '' || text.startsWith('#') || isPassiveData(text)) return;
    found.push(`the address ${shorten(text)}`);
  };
  /** For each open bracket, whether strings in it are addresses. */
  const open: boolean[] = [];
  tokenize(css, (type, start, end) => {
    const text = css.slice(start, end);
    switch (type) {
      case tokenTypes.AtKeyword:
        if (ident.decode(text.slice(1)).toLowerCase() === 'import') found.push('`@import`');
        break;
      case tokenTypes.Function: {
        const name = ident.decode(text.slice(0, -1));
        open.push(takesAddress.test(name));
        // Written with escapes, `url(` is none to this tokenizer and one to a browser.
        if (takesAddress.test(name) && text.includes('\\')) found.push('an address with escapes');
        break;
      }
      case tokenTypes.LeftParenthesis:
        open.push(false);
        break;
      case tokenTypes.RightParenthesis:
        open.pop();
        break;
      case tokenTypes.Url:
        look(urlToken.decode(text));
        break;
      case tokenTypes.BadUrl:
        found.push('an address that cannot be read');
        break;
      case tokenTypes.String:
        if (open.includes(true)) look(text.slice(1, -1));
        break;
    }
  });
  return found;
}
