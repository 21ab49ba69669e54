/**
 * The rule on sentences with labelled truth. No true sentence and no silent one may have a finding; how many of
 * the false ones are found, and how many true ones are read, is printed.
 */
import { afterAll, describe, expect, test } from 'vitest';
import { blindEnglish } from './testing/blind-english.ts';
import { blindGerman } from './testing/blind-german.ts';
import { blindSpanish } from './testing/blind-spanish.ts';
import type { Label, Passage } from './testing/corpus.ts';
import { openEnglish } from './testing/open-english.ts';
import { openGerman } from './testing/open-german.ts';
import { openSpanish } from './testing/open-spanish.ts';
import { readSentence } from './testing/read-passage.ts';

const parts: readonly (readonly [string, 'en' | 'de' | 'es', readonly Passage[]])[] = [
  ['blind', 'en', blindEnglish],
  ['blind', 'de', blindGerman],
  ['blind', 'es', blindSpanish],
  ['open', 'en', openEnglish],
  ['open', 'de', openGerman],
  ['open', 'es', openSpanish],
];

interface Tally {
  readonly part: string;
  readonly language: string;
  readonly label: Label;
  readonly found: boolean;
  readonly read: boolean;
  readonly sentence: string;
}

const tallies: Tally[] = [];

describe.each(parts)('%s %s', (part, language, passages) => {
  const sentences = passages.flatMap(({ sentences: all, ...passage }) =>
    all.map(([label, sentence]) => ({ label, sentence, passage })),
  );
  test.each(sentences)('$label: $sentence', ({ label, sentence, passage }) => {
    const { findings, stated } = readSentence({ language, ...passage, says: sentence });
    const found = findings.length > 0;
    tallies.push({ part, language, label, found, read: stated.length > 0, sentence });
    if (label !== 'false') expect(findings).toEqual([]);
  });
});

afterAll(() => {
  const share = (count: number, of: number) =>
    `${count}/${of} (${((100 * count) / Math.max(1, of)).toFixed(0)}%)`;
  const rows = ['blind', 'whole'].flatMap((part) =>
    ['en', 'de', 'es'].map((language) => {
      const own = tallies.filter(
        (one) => one.language === language && (part === 'whole' || one.part === part),
      );
      const of = (label: Label) => own.filter((one) => one.label === label);
      const found = own.filter((one) => one.found);
      const right = found.filter(({ label }) => label === 'false').length;
      return [
        `${part.padEnd(6)} ${language}: ${String(own.length).padStart(3)} sentences`,
        `precision ${share(right, found.length)}`,
        `recall ${share(right, of('false').length)}`,
        `true ones read ${share(of('true').filter(({ read }) => read).length, of('true').length)}`,
      ].join(', ');
    }),
  );
  console.log(`\n${rows.join('\n')}\n`);
  if (process.env.WORDS_MISSED) {
    for (const { language, label, found, read, sentence } of tallies) {
      if (label === 'false' && !found) console.log(`missed ${language}: ${sentence}`);
      if (label === 'true' && !read) console.log(`unread ${language}: ${sentence}`);
    }
  }
});
