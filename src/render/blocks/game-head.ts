import type { Element, ElementContent } from 'hast';
import type { GameBlock } from '../../model/index.ts';
import { dateLanguage } from '../../strings/index.ts';
import type { RenderContext } from '../context.ts';
import { element } from '../hast.ts';

/** Players, place, date and result, as far as the game's tags give them (PGN standard, 8.1.1). */
export function gameHead({ settings, strings }: RenderContext, block: GameBlock): Element[] {
  const tag = (name: string): string | undefined => {
    const value = block.tags[name]?.trim() ?? '';
    return /^[?\-.\s]*$/.test(value) ? undefined : value;
  };
  const player = (side: 'White' | 'Black') => {
    const name = tag(side);
    const rating = tag(`${side}Elo`);
    if (name === undefined) return undefined;
    const names = name.split(':').map(inReadingOrder).join(` ${strings.and} `);
    return rating === undefined ? names : `${names} (${rating})`;
  };
  const [white, black] = [player('White'), player('Black')];
  const result = resultInPrint(tag('Result') ?? block.result);
  const known = white !== undefined || black !== undefined;
  const players: (ElementContent | string)[] = [
    `${white ?? strings.someone} – ${black ?? strings.someone}`,
    ...(result === undefined ? [] : [' ', element('span', { className: ['result'] }, [result])]),
  ];

  const event = tag('Event');
  const round = tag('Round');
  const site = tag('Site');
  const date = dateInWords(block.tags.Date ?? '', settings.language);
  const facts = [
    event,
    round && strings.round(round),
    event !== undefined && site !== undefined && event.includes(site) ? undefined : site,
    date,
  ].filter((fact) => fact !== undefined);
  return [
    ...(known ? [element('p', { className: ['players'] }, players)] : []),
    ...(facts.length > 0 ? [element('p', { className: ['event'] }, [facts.join(', ')])] : []),
  ];
}

/** A result with a dash between the figures; undefined where the game's end is unknown. */
export function resultInPrint(result: string | undefined): string | undefined {
  if (result === '1/2-1/2') return '½–½';
  return result === '1-0' || result === '0-1' ? result.replace('-', '–') : undefined;
}

/** The PGN standard writes the last name first: `Whitlow, Casper`. */
function inReadingOrder(name: string): string {
  const [last = '', first = '', ...more] = name.split(/\s*,\s*/);
  return first === '' || more.length > 0 ? name.trim() : `${first} ${last}`.trim();
}

/** A PGN date such as `2025.02.06` in words; unknown fields (`??`) are left out. */
function dateInWords(date: string, language: string): string | undefined {
  const [, year, month, day] = /^(\d{4})\.(\d\d|\?\?)\.(\d\d|\?\?)$/.exec(date) ?? [];
  if (year === undefined) return undefined;
  if (month === undefined || month === '??') return String(Number(year));
  const known = day !== undefined && day !== '??';
  const when = new Date(Date.UTC(Number(year), Number(month) - 1, known ? Number(day) : 1));
  return new Intl.DateTimeFormat(dateLanguage(language), {
    year: 'numeric',
    month: 'long',
    ...(known && { day: 'numeric' }),
    timeZone: 'UTC',
  }).format(when);
}
