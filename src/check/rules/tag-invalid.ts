import { defineCourseRule } from '../course-rule.ts';

export const tagInvalid = defineCourseRule({
  id: 'tag-invalid',
  severity: 'warning',
  finds: 'A tag of a game with a date that is none, or an ECO code that is none.',
  documentation: `
A date is \`year.month.day\`, with question marks for what is not known, such as \`2025.11.??\` (PGN standard,
8.1.1.3), and a day of the calendar. A code of the Encyclopaedia of Chess Openings is a letter from A to E
and two figures, such as \`B90\`; behind it may stand a slash and two figures more (PGN standard, 9.4.1), or
a small letter (common practice). A single \`?\` or \`-\` says that a tag's value is not known.
`,
  examples: [
    {
      title: 'A month that no calendar has, and a letter that no code has',
      course: '```game\n[Date "2024.13.01"]\n[ECO "F12"]\n\n1. e4 e5 *\n```',
      findings: [
        {
          at: '2:8-2:18',
          message: 'The tag Date says `2024.13.01`, and there is no such day.',
          hint: 'Write year.month.day, with ?? for what is not known, such as `2025.11.??`.',
        },
        {
          at: '3:7-3:10',
          message: 'The tag ECO says `F12`, and there is no such code.',
          hint: 'Write a letter from A to E and two figures, such as `B90`.',
        },
      ],
    },
    {
      title: 'What is known in part',
      course:
        '```game\n[Date "2024.02.29"]\n[EventDate "????.??.??"]\n[ECO "C65/02"]\n\n1. e4 e5 *\n```\n\n```moves\n[UTCDate "2023.12.??"]\n[ECO "?"]\n\n1. e4 e5 2. Nf3\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'game' && block.kind !== 'moves') continue;
      for (const [name, value] of Object.entries(block.tags)) {
        const place = block.tagPlaces[name];
        if (!place || /^[-? ]*$/.test(value)) continue;
        if (dates.has(name) && !isDate(value)) {
          yield {
            place,
            message: `The tag ${name} says \`${value}\`, and there is no such day.`,
            hint: 'Write year.month.day, with ?? for what is not known, such as `2025.11.??`.',
          };
        }
        if (name === 'ECO' && !/^[A-E]\d\d(?:\/\d\d)?[a-z]?$/.test(value)) {
          yield {
            place,
            message: `The tag ECO says \`${value}\`, and there is no such code.`,
            hint: 'Write a letter from A to E and two figures, such as `B90`.',
          };
        }
      }
    }
  },
});

/** PGN standard, 8.1.1.3, 9.1.8 and 9.5.2. */
const dates = new Set(['Date', 'EventDate', 'UTCDate']);

function isDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4}|\?{4})\.(\d\d|\?\?)\.(\d\d|\?\?)$/.exec(text) ?? [];
  if (year === undefined || month === undefined || day === undefined) return false;
  // What is not known may be a leap year and a month of 31 days.
  const [y, m, d] = [known(year, 2000), known(month, 1), known(day, 1)];
  const date = new Date(Date.UTC(2000, m - 1, d));
  date.setUTCFullYear(y, m - 1, d);
  return date.getUTCMonth() === m - 1 && date.getUTCDate() === d;
}

function known(text: string, otherwise: number): number {
  return text.includes('?') ? otherwise : Number(text);
}
