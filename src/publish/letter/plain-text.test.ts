import { expect, test } from 'vitest';
import { element } from '../../render/index.ts';
import { makePlainText } from './plain-text.ts';

// RFC 5322, 2.3: a carriage return stands in a message only before a line feed.
test('code whose lines end as on another system has the line ends of the letter', () => {
  const code = element('pre', {}, [element('code', {}, ['one\r\ntwo\rthree'])]);
  expect(makePlainText({ head: [], foot: [] }, undefined, [code])).toMatch(/^one\ntwo\nthree\n/);
});
