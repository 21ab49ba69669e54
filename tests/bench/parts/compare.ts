import { compareFormats } from '../../../src/cli/compare/compare-formats.ts';
import { inTurn, ratio, typical } from '../in-turn.ts';
import { cli, measure } from '../measure.ts';
import { heading, row } from '../report.ts';
import { demo, gamesFile, yardstick, yardstickUnit } from '../yardstick.ts';

const many = 200_000;

/** `compare` of many games with the demo course in every format, against a bare replay of a few. */
export async function benchCompare(work: string): Promise<void> {
  heading('compare with the demo course');
  const file = gamesFile(many, work);
  for (const format of compareFormats) {
    const { bare, subject } = inTurn(3, {
      bare: () => yardstick(work),
      subject: () => measure([cli, 'compare', file, demo, '--format', format], { work }),
    });
    const { processor, megabytes } = typical(subject);
    row(`${many} whole games: compare, ${format}`, typical(subject), [
      { value: processor, unit: 's', goal: 20 },
      { value: megabytes, unit: 'MB', goal: 250 },
      { ...ratio(subject, bare), unit: yardstickUnit },
    ]);
  }
}
