import { otherColor, sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { developedPieces } from './shared/developed.ts';

export const developmentLead = defineClaim({
  name: 'development-lead',
  usage: ['development-lead white', 'development-lead white 2'],
  definition: `
The side has more developed knights and bishops than the other, by the count of \`development\`; with a
number, exactly so many more.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'rnb1kbnr/ppp1pppp/8/q7/8/2N5/PPPP1PPP/R1BQKBNR w KQkq - 2 4',
      claim: 'development-lead white and development-lead white 1',
      holds: true,
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'development-lead white',
      holds: false,
      because: 'White has developed 2 knights and bishops, and Black 2',
    },
    {
      fen: 'rnb1kbnr/ppp1pppp/8/q7/8/2N5/PPPP1PPP/R1BQKBNR w KQkq - 2 4',
      claim: 'development-lead white 2',
      holds: false,
      because: 'White has developed 1 knight or bishop, and Black 0',
    },
  ],
  parse(words) {
    const color = words.color();
    return { color, lead: words.done ? undefined : words.count(1) };
  },
  judge({ position }, { color, lead }) {
    const own = developedPieces(position, color).length;
    const other = developedPieces(position, otherColor(color)).length;
    const because = `${sideName(color)} has developed ${own} ${own === 1 ? 'knight or bishop' : 'knights and bishops'}, and ${sideName(otherColor(color))} ${other}`;
    const holds = lead === undefined ? own > other : own - other === lead;
    if (holds) return yes(because);
    return no(because, own > other ? `development-lead ${color} ${own - other}` : undefined);
  },
});
