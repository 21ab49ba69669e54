import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { type AddressedPlace, findAddress } from '../browser/lost-address/find-address.ts';
import { positionAddress, readPositionAddress } from '../contract/position-address.ts';
import { addressAfter } from '../contract/testing/address-after.ts';
import { renderCourse } from '../site/render/testing/render-course.ts';

const letters = { king: 'K', queen: 'Q', rook: 'R', bishop: 'B', knight: 'N', pawn: '' };

interface Place extends AddressedPlace {
  readonly id: string;
}

/** What a browser finds in a chapter's page: every element that sets its board, in order. */
function placesIn(html: string): Place[] {
  const places: Place[] = [];
  let block = 0;
  for (const [tag, of] of html.matchAll(
    /<(?:section class="(?:game|exercise)|div class="(?:moves)|figure class="|a class="move)"[^>]*>/g,
  )) {
    if (!tag.startsWith('<a ')) block += 1;
    const id = / id="([^"]*)"/.exec(tag)?.[1] ?? '';
    const told = / data-p="([^"]*)"/.exec(tag)?.[1];
    const key = readPositionAddress(told ?? id)?.key ?? told;
    if (key === undefined || of === undefined) {
      if (key === undefined) continue;
    }
    const [placement = ''] = key.split(' ');
    places.push({
      id,
      address: positionAddress(key),
      placement,
      block,
      isMain: true,
      move: undefined,
    });
  }
  return places;
}

/** Where a browser comes to with an address. */
function follow(id: string, places: readonly Place[]) {
  const place = places.find((each) => each.id === id);
  return place ? { place, isGone: false } : findAddress(id, places, letters);
}

const lines = [
  '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6',
  '1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 (3... Nf6 4. d3) 4. c3',
  '1. Nf3 Nc6 2. e4 e5 3. Bb5',
  '1. d4 d5 2. c4 e6 3. Nc3 Nf6',
  '1. c4 e6 2. d4 d5 3. Nf3',
  '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6',
  '5. e4 e5 6. Nf3 Nc6',
];
const from5 = ' fen="rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 5"';

let names = 0;
const block = fc
  .record({
    line: fc.constantFrom(...lines),
    kind: fc.constantFrom('moves', 'moves', 'moves', 'game', 'words'),
    isNamed: fc.boolean(),
  })
  .map(({ line, kind, isNamed }) => {
    names += 1;
    const start = line.startsWith('5.') ? from5 : '';
    if (kind === 'words') return `## ${names} words\n\nSome words.`;
    if (kind === 'game') return `\`\`\`game\n${start ? lines[0] : line} *\n\`\`\``;
    return `\`\`\`moves${start}\n${line}${isNamed ? ` {:here[name-${names}]}` : ''}\n\`\`\``;
  });

const edit = fc.oneof(
  fc.record({ type: fc.constant('insert' as const), at: fc.nat(), block }),
  fc.record({ type: fc.constant('delete' as const), at: fc.nat() }),
  fc.record({ type: fc.constant('move' as const), at: fc.nat(), to: fc.nat() }),
  fc.record({ type: fc.constant('chapter' as const), at: fc.nat(), block }),
);
const chapter = fc.array(block, { minLength: 1, maxLength: 4 });

test('every address whose position its chapter still shows leads to that position', () => {
  let followed = 0;
  let gone = 0;
  fc.assert(
    fc.property(
      chapter,
      chapter,
      fc.array(edit, { minLength: 1, maxLength: 6 }),
      (one, two, edits) => {
        const before = renderCourse([one.join('\n\n'), two.join('\n\n')]);
        const blocks = [...one];
        const others = [two.join('\n\n')];
        for (const each of edits) {
          const at = each.at % (blocks.length + 1);
          if (each.type === 'insert') blocks.splice(at, 0, each.block);
          else if (each.type === 'chapter') others.push(each.block);
          else if (each.type === 'delete' && blocks.length > 1) blocks.splice(at, 1);
          else if (each.type === 'move') {
            const [moved] = blocks.splice(at, 1);
            if (moved !== undefined) blocks.splice(each.to % (blocks.length + 1), 0, moved);
          }
        }
        const [after = ''] = renderCourse([blocks.join('\n\n'), ...others.slice(0, 2)]);
        const now = placesIn(after);
        for (const { id, address } of placesIn(before[0] ?? '')) {
          const isName = readPositionAddress(id) === undefined;
          const shown = now.some((place) => place.address === address);
          const found = follow(id, now);
          if (isName) continue;
          followed += 1;
          if (!shown) gone += 1;
          expect({ id, isGone: found?.isGone ?? true }).toEqual({ id, isGone: !shown });
          if (shown) expect(found?.place.address).toBe(address);
        }
      },
    ),
    { numRuns: runs(60) },
  );
  expect(followed).toBeGreaterThan(runs(100));
  expect(gone).toBeGreaterThanOrEqual(runs(5));
});

test('a position that is gone leads to the one on whose board the fewest squares differ', () => {
  const [html = ''] = renderCourse(['```moves\n1. e4 e5 2. Nf3 (2. Nc3 Nf6) 2... Nc6\n```']);
  const nearest = (moves: string) => follow(addressAfter(moves), placesIn(html));
  // The line was cut short.
  expect(nearest('e4 e5 Nf3 Nc6 Bb5')).toMatchObject({
    isGone: true,
    place: { address: addressAfter('e4 e5 Nf3 Nc6') },
  });
  // An earlier move of it is another now.
  expect(nearest('e4 e5 Nf3 Nf6')).toMatchObject({ isGone: true });
});

test('an address of an earlier edition leads to its move in the block that is nearest', () => {
  const move = (number: number, color: 'white' | 'black', san: string) => ({ number, color, san });
  const at = (block: number, made: AddressedPlace['move'], isMain = true) => ({
    address: '',
    placement: '8/8/8/8/8/8/8/8',
    block,
    isMain,
    move: made,
  });
  const places = [
    at(1, undefined),
    at(1, move(1, 'white', 'e4')),
    at(2, undefined),
    at(2, move(1, 'white', 'e4')),
    at(2, move(1, 'black', 'e5')),
    at(2, move(2, 'white', 'Sf3+')),
  ];
  const german = { ...letters, knight: 'S' };
  const found = (id: string) => findAddress(id, places, german);
  expect(found('b1-1-e4')).toEqual({ place: places[1], isGone: false });
  expect(found('b2-1-e4')).toEqual({ place: places[3], isGone: false });
  // A block was taken out above it.
  expect(found('b3-2-Nf3')).toEqual({ place: places[5], isGone: false });
  expect(found('b1')).toEqual({ place: places[0], isGone: false });
  // The move is gone: the line as far as it is left.
  expect(found('b2-2b-Nc6')).toEqual({ place: places[5], isGone: true });
  expect(found('b1-1b-c5')).toEqual({ place: places[1], isGone: true });
  expect(found('nothing')).toBeUndefined();
  // A diagram stands where the block stood.
  const diagram = { ...at(1, undefined), placement: '8/8/8/8/4P3/8/8/8' };
  expect(findAddress('b1-2b-Nc6', [diagram, ...places.slice(2)], german)?.place).toBe(places[5]);
});
