import { expect, test } from 'vitest';
import { ruleAddress } from '../diagnostics/index.ts';
import { handbookAddress } from './handbook-address.ts';

test.each([
  ['https://example.org', 'https://example.org/'],
  ['https://example.org/book', 'https://example.org/book/'],
  ['https://example.org/book/index.html#x', 'https://example.org/book/'],
  ['file:///home/a/handbook', 'file:///home/a/handbook/'],
])('%s is the handbook at %s', (named, address) => {
  expect(handbookAddress(named)).toBe(address);
  expect(ruleAddress(address, 'move-illegal')).toBe(`${address}rules.html#move-illegal`);
});

test('what the environment names comes before what the package names; nothing is made up', () => {
  expect(handbookAddress('', undefined)).toBeUndefined();
  expect(handbookAddress(undefined, 'https://a.example/')).toBe('https://a.example/');
  expect(handbookAddress('https://b.example/', 'https://a.example/')).toBe('https://b.example/');
});

test.each(['handbook', 'javascript:alert(1)', '/home/a'])('%s is refused', (named) => {
  expect(() => handbookAddress(named)).toThrow(
    `the handbook's address in LINEWRIGHT_HANDBOOK is no address: ${named}`,
  );
});
