import { describe, expect, test } from 'vitest';
import { parseFen, playMove } from '../../chess/index.ts';
import { positionOf } from '../../lookup/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { assignAddresses } from '../../render/addresses.ts';
import { makeCourseTable } from './course-table.ts';

function tableOf(text: string, side: 'white' | 'black' | 'both' = 'black') {
  const course = courseOf(`\`\`\`moves\n${text}\n\`\`\`\n`, side);
  return makeCourseTable(course, assignAddresses(course));
}

/** The positions of a table as text: their moves with what they are to the course. */
function outline(table: ReturnType<typeof tableOf>) {
  return table.positions.map(({ moves }) => moves.map(({ san, kind }) => `${san} ${kind}`));
}

describe('the table of positions', () => {
  test('has the advice first, though an alternative stands before it', () => {
    const table = tableOf('1. d4 d5 {:option[solid]} ( 1... Nf6 ) ( 1... g5? )');
    expect(outline(table)).toEqual([
      ['d4 reply'],
      ['d5 option', 'Nf6 option', 'g5 bad'],
      [],
      [],
      [],
    ]);
  });

  test('says which positions come before the subject, where the course names it', () => {
    const course = courseOf('```moves\n1. d4 d5 {:here[subject]} 2. c4\n```\n', 'black');
    const settings = { ...course.settings, begins: 'subject' };
    const addresses = assignAddresses(course);
    expect(makeCourseTable({ ...course, settings }, addresses).before).toEqual([0, 1]);
    expect(makeCourseTable(course, addresses)).not.toHaveProperty('before');
  });

  test('joins move orders, and moves lead where the board says', () => {
    const table = tableOf(
      '1. d4 d5 2. c4 e6 ( 2... c6 ) ( 2... e5 )\n( 1. c4 e6 2. d4 d5 )',
      'both',
    );
    for (const { key, moves } of table.positions) {
      const position = parseFen(`${key} 0 1`);
      if ('reason' in position) throw new Error(position.reason);
      for (const { san, to } of moves) {
        const played = playMove(position, san);
        if ('reason' in played) throw new Error(played.reason);
        expect(table.positions[to]?.key).toBe(played.after.key);
      }
    }
    const keys = table.positions.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const [index, key] of keys.entries()) expect(positionOf(table, key)).toBe(index);
  });

  test('changes its edition with its content, and not without', () => {
    const once = tableOf('1. d4 d5');
    expect(tableOf('1. d4 d5').edition).toBe(once.edition);
    expect(tableOf('1. d4 Nf6').edition).not.toBe(once.edition);
    expect(tableOf('1. d4 Nf6').course).toBe(once.course);
  });
});
