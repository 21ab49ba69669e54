import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { x } from 'xastscript';
import { writeXml } from './write-xml.ts';

// XML 1.0, 2.2 and 2.4; saxes is the independent reader. A book with such a title did not open.
test.each([']]>', '<![CDATA[x]]>', '-->', '&#0;', '\u001b', '\uffff', '\ud800', '"', "'"])(
  'a text or a value may be %j',
  (value) => {
    const parser = new SaxesParser({ xmlns: true });
    const faults: string[] = [];
    let read = '';
    parser.on('error', ({ message }) => faults.push(message));
    parser.on('text', (text) => {
      read += text;
    });
    parser.write(writeXml(x('a', { b: value }, value))).close();
    expect(faults).toEqual([]);
    expect(read.trim()).toBe(
      [...value].filter((sign) => !'\u001b\uffff\ud800'.includes(sign)).join(''),
    );
  },
);
