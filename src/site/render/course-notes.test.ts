import { describe, expect, test } from 'vitest';
import { noteName } from '../../lookup/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { assignAddresses, contextOf } from '../../render/index.ts';
import { makeCourseNotes } from './course-notes.ts';
import { makeCourseTable } from './course-table.ts';

function notesOf(files: Parameters<typeof courseOf>[0]) {
  const course = courseOf(files, 'white');
  const base = { ...contextOf(course), addresses: assignAddresses(course) };
  const table = makeCourseTable(base.course, base.addresses);
  const notes = makeCourseNotes(base, table);
  const on = (san: string) =>
    table.positions.flatMap(({ moves }, index) =>
      moves.some((move) => move.san === san) ? [notes.notes[noteName(index, san)]] : [],
    )[0];
  return { notes, on, table };
}

const moves = (text: string) => `\`\`\`moves\n${text}\n\`\`\`\n`;

describe('notes for practice', () => {
  test('have the comments on the moves of the own side, rendered, with marks and arrows', () => {
    const { on } = notesOf(
      moves(
        '1. e4 {*Takes* the centre. :mark[d5 f5] :plan[g1-f3]} e5 {A reply.} 2. Nf3 ( {Too early:} 2. Qh5? {Nothing hangs.} )',
      ),
    );
    expect(on('e4')).toEqual({
      html: '<em>Takes</em> the centre.',
      marks: ['d5', 'f5'],
      arrows: [{ meaning: 'plan', from: 'g1', to: 'f3' }],
    });
    expect(on('Qh5')?.html).toBe('Too early: Nothing hangs.');
    expect(on('e5')).toBeUndefined();
    expect(on('Nf3')).toBeUndefined();
  });

  test('lead from any page: every link names the page of its chapter', () => {
    const { on } = notesOf({
      'chapters/1.md': `# One\n\n${moves('1. e4 {See [this](pos:after), [below](#more) and [two](2.md#part). <b>} e5 {:here[after]}')}\n## More\n`,
      'chapters/2.md': '# Two\n\n## Part\n',
    });
    const html = on('e4')?.html ?? '';
    const links = [...html.matchAll(/href="([^"]*)"/g)].map(([, href]) => href);
    expect(links).toEqual(['1.html#after', '1.html#more', '2.html#part']);
    // In a comment HTML is text.
    expect(html).toContain('&#x3C;b>');
  });

  test('join what is said in several places, each thing once', () => {
    const { on } = notesOf({
      'chapters/1.md': moves('1. e4 {Good.} e5'),
      'chapters/2.md': moves('1. e4 {Good.} c5'),
      'chapters/3.md': moves('1. e4 {Very good.} e6'),
    });
    expect(on('e4')?.html).toBe('Good. Very good.');
  });

  test('tell what practice leaves out, and where its lines do not go', () => {
    const { notes, table } = notesOf(
      moves('1. e4 ( 1. d4 {:option[]} d5 2. c4 ) e5 2. Nf3 Nc6 {:learn[none]} 3. Bb5'),
    );
    const sansAt = (positions: readonly number[]) =>
      positions.flatMap((position) => table.positions[position]?.moves.map(({ san }) => san) ?? []);
    expect(sansAt(notes.unasked)).toEqual(['Bb5']);
    expect(sansAt(notes.aside).sort()).toEqual(['Bb5', 'c4', 'd5']);
  });

  test('tell where lines begin, with the number of the move there', () => {
    const { notes, table } = notesOf(
      `${moves('1. e4 e5 2. Nf3 {:here[knight]} Nc6')}\n\`\`\`moves from="knight"\n2... d6 3. d4\n\`\`\`\n`,
    );
    expect(notes.starts.map(({ chapter, number }) => [chapter, number])).toEqual([
      [0, 1],
      [0, 2],
    ]);
    const [, second] = notes.starts;
    expect(table.positions[second?.position ?? -1]?.moves.map(({ san }) => san)).toEqual([
      'Nc6',
      'd6',
    ]);
  });
});
