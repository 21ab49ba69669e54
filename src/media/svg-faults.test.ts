import { htmlEventAttributes } from 'html-event-attributes';
import { svgTagNames } from 'svg-tag-names';
import { describe, expect, test } from 'vitest';
import { drawingElements } from './svg-elements.ts';
import { findSvgFaults } from './svg-faults.ts';
import { activeSvgs, plainSvgs } from './testing/svgs.ts';

const faultsOf = (text: string) =>
  findSvgFaults(text).map(({ what, start, end }) => `${what}: ${text.slice(start, end)}`);

describe('what is active is found', () => {
  test.each(Object.entries(activeSvgs))('%s', (_, text) => {
    expect(faultsOf(text)).not.toEqual([]);
  });
});

describe('what only draws is let through', () => {
  test.each(Object.entries(plainSvgs))('%s', (_, text) => {
    expect(faultsOf(text.replace(/^\uFEFF/, ''))).toEqual([]);
  });
});

test('each part is named with its place, to the character', () => {
  const text = `<?go now?>
<svg xmlns="http://www.w3.org/2000/svg"
  onload = 'a("b")'>
  <script type="x">1</script>
  <a href="javascript:1" id="x"/>
  <style>@import "x"; a { mask: url(http://example.org/x) }</style>
</svg>`;
  expect(faultsOf(text)).toEqual([
    'the processing instruction `<?go?>`: <?go now?>',
    'the event handler `onload`: onload = \'a("b")\'',
    '`<script>`: <script type="x">',
    'the address javascript:1: href="javascript:1"',
    '`@import` in `<style>`: <style>',
    'the address http://example.org/x in `<style>`: <style>',
  ]);
});

test('every element of the published list draws, or is one that runs or brings in documents', () => {
  // svg-tag-names 3.0.1: the elements of SVG 1.1, SVG Tiny 1.2 and SVG 2.
  const others = svgTagNames.filter((name) => !drawingElements.has(name));
  expect(others).toEqual([
    'animation',
    'audio',
    'canvas',
    'foreignObject',
    'handler',
    'iframe',
    'listener',
    'prefetch',
    'script',
    'video',
  ]);
});

test('every event handler of the published list is found', () => {
  // html-event-attributes 2.2.0; the others are those of SVG 1.1, appendix "Event attributes".
  const svgEvents = [
    'onbegin',
    'onend',
    'onrepeat',
    'onzoom',
    'onactivate',
    'onfocusin',
    'onunload',
  ];
  const names = [...htmlEventAttributes, ...svgEvents];
  expect(names.length).toBeGreaterThan(70);
  for (const name of names) {
    const text = `<svg xmlns="http://www.w3.org/2000/svg"><rect ${name}="a()"/></svg>`;
    expect(faultsOf(text)).toEqual([`the event handler \`${name}\`: ${name}="a()"`]);
  }
});
