import fc from 'fast-check';

/**
 * Strings of any characters of Unicode, and the names that objects have by themselves. What fast-check offers for the
 * first (`unit: 'binary'`) lists the whole of Unicode before its first string, which takes longer than a test.
 */
export function anyString(maxLength: number): fc.Arbitrary<string> {
  const character = fc
    .integer({ min: 0, max: 0x10ffff - 0x800 })
    // Without the halves of pairs, which are no characters.
    .map((code) => String.fromCodePoint(code < 0xd800 ? code : code + 0x800));
  const latin = fc.integer({ min: 0, max: 0xff }).map((code) => String.fromCodePoint(code));
  const list = fc.array(fc.oneof(character, latin), { maxLength });
  return fc.oneof(
    { weight: 20, arbitrary: list.map((characters) => characters.join('')) },
    { weight: 1, arbitrary: fc.constantFrom('__proto__', 'constructor', 'toString', 'key') },
  );
}
