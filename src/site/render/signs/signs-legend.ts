import { toHtml } from 'hast-util-to-html';
import { type BoardPicture, drawBoardInPage, stateMark, states } from '../../../draw/index.ts';
import { glyphSign, glyphsWithSigns } from '../../../movetext/index.ts';
import { glyph } from '../../../render/index.ts';
import type { Strings } from '../../../strings/index.ts';
import type { SignsLegend } from '../../site-data.ts';

type Sign = SignsLegend['boards'][number]['sign'];

/** One small position; each board shows one sign over it. */
const placement = '6k1/5ppp/5n2/8/8/5N2/5PPP/6K1';
const shown: Readonly<Record<Sign, Partial<BoardPicture>>> = {
  turn: { turn: 'white' },
  lastMove: { lastMove: { from: 'g1', to: 'f3' } },
  mark: { marks: ['e5'] },
  plan: { arrows: [{ meaning: 'plan', from: 'f3', to: 'e5' }] },
  threat: { arrows: [{ meaning: 'threat', from: 'f3', to: 'h4' }] },
  guard: { arrows: [{ meaning: 'guard', from: 'f3', to: 'h2' }] },
};

/** What boards and moves show, drawn and worded by the same code and tables as everywhere else. */
export function signsLegend(strings: Strings): SignsLegend {
  const boards = Object.entries(shown).map(([sign, picture]) => ({
    sign: sign as Sign,
    board: drawBoardInPage({ placement, ...picture }),
  }));
  const bySign = new Map<string, { html: string; meanings: string[] }>();
  for (const nag of glyphsWithSigns()) {
    const sign = glyphSign(nag) ?? '';
    const meaning = strings.glyph(nag);
    if (meaning === undefined) continue;
    const known = bySign.get(sign);
    if (known !== undefined) known.meanings.push(meaning);
    else bySign.set(sign, { html: toHtml(glyph(nag, strings)), meanings: [meaning] });
  }
  const glyphs = [...bySign.values()].map(({ html, meanings }) => ({
    html,
    meaning: meanings.join('; '),
  }));
  return { boards, glyphs, states: states.map((state) => ({ state, mark: stateMark(state) })) };
}
