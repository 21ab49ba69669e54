import { latin1, type PgnCase } from './pgn-case.ts';

const long = 'x'.repeat(260);

/** Sections 2 to 7 of the PGN standard (1994-03-12): bytes, lines, comments, escapes, tokens. */
export const casesOfFiles: readonly PgnCase[] = [
  {
    number: 1,
    what: '2.3: the sample game, 85 plies',
    pgn: `[Event "F/S Return Match"]
[Site "Belgrade, Serbia JUG"]
[Date "1992.11.04"]
[Round "29"]
[White "One, Player"]
[Black "Two, Player"]
[Result "1/2-1/2"]

1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6 5. O-O Be7 6. Re1 b5 7. Bb3 d6 8. c3
O-O 9. h3 Nb8 10. d4 Nbd7 11. c4 c6 12. cxb5 axb5 13. Nc3 Bb7 14. Bg5 b4 15.
Nb1 h6 16. Bh4 c5 17. dxe5 Nxe4 18. Bxe7 Qxe7 19. exd6 Qf6 20. Nbd2 Nxd6 21.
Nc4 Nxc4 22. Bxc4 Nb6 23. Ne5 Rae8 24. Bxf7+ Rxf7 25. Nxf7 Rxe1+ 26. Qxe1 Kxf7
27. Qe3 Qg5 28. Qxg5 hxg5 29. b3 Ke6 30. a3 Kd6 31. axb4 cxb4 32. Ra5 Nd5 33.
f3 Bc8 34. Kf2 Bf5 35. Ra7 g6 36. Ra6+ Kc5 37. Ke1 Nf4 38. g3 Nxh3 39. Kd2 Kb5
40. Rd6 Kc5 41. Ra6 Nf2 42. g4 Bd3 43. Re6 1/2-1/2
`,
    blocks: [
      '1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Ba4 Nf6 5. O-O Be7 6. Re1 b5 7. Bb3 d6 8. c3 O-O 9. h3 Nb8 10. d4 Nbd7 11. c4 c6 12. cxb5 axb5 13. Nc3 Bb7 14. Bg5 b4 15. Nb1 h6 16. Bh4 c5 17. dxe5 Nxe4 18. Bxe7 Qxe7 19. exd6 Qf6 20. Nbd2 Nxd6 21. Nc4 Nxc4 22. Bxc4 Nb6 23. Ne5 Rae8 24. Bxf7+ Rxf7 25. Nxf7 Rxe1+ 26. Qxe1 Kxf7 27. Qe3 Qg5 28. Qxg5 hxg5 29. b3 Ke6 30. a3 Kd6 31. axb4 cxb4 32. Ra5 Nd5 33. f3 Bc8 34. Kf2 Bf5 35. Ra7 g6 36. Ra6+ Kc5 37. Ke1 Nf4 38. g3 Nxh3 39. Kd2 Kb5 40. Rd6 Kc5 41. Ra6 Nf2 42. g4 Bd3 43. Re6 1/2-1/2',
    ],
    tags: { Site: 'Belgrade, Serbia JUG', Round: '29' },
  },
  {
    number: 2,
    what: '3.2.2: lines end with LF',
    pgn: '1. e4 e5\n2. Nf3 *\n',
    blocks: ['1. e4 e5 2. Nf3 *'],
  },
  {
    number: 3,
    what: '3.2.2: lines end with CRLF',
    pgn: '[White "A"]\r\n\r\n1. e4 e5\r\n2. Nf3 *\r\n',
    blocks: ['1. e4 e5 2. Nf3 *'],
    tags: { White: 'A' },
  },
  {
    number: 4,
    what: '3.2.2: lines end with a lone CR',
    pgn: '[White "A"]\r\r1. e4 e5\r2. Nf3 *\r',
    blocks: ['1. e4 e5 2. Nf3 *'],
    tags: { White: 'A' },
    alone: 'it knows LF and CRLF',
  },
  {
    number: 5,
    what: '4.1: the byte E9 in a comment is é',
    pgn: latin1('1. e4 {café} e5 *'),
    blocks: ['1. e4 {café} 1... e5 *'],
  },
  {
    number: 6,
    what: '4.1: bytes 80 to 9F, DEL and NUL',
    pgn: latin1('1. e4 {a\u0093b\u0094 c\u007Fd e\u0000f} e5 *'),
    blocks: ['1. e4 {a“b” c d e f} 1... e5 *'],
    told: ['control character', 'Windows-1252'],
  },
  {
    number: 7,
    what: '4.2: HT and VT between tokens',
    pgn: '1. e4\te5\v2. Nf3 *',
    blocks: ['1. e4 e5 2. Nf3 *'],
  },
  {
    number: 8,
    what: '7: a tab in a string',
    pgn: '[Event "a\tb"]\n\n1. e4 *',
    blocks: ['1. e4 *'],
    told: ['a tab'],
    words: ['a\tb'],
  },
  {
    number: 9,
    what: '4.3: a line of more than 255 characters',
    pgn: `1. e4 {${'word '.repeat(60)}end} e5 *`,
    blocks: [`1. e4 {${'word '.repeat(60)}end} 1... e5 *`],
    told: ['255'],
  },
  {
    number: 10,
    what: '4.1: letters outside ASCII in a symbol',
    pgn: '[Évent "x"]\n\n1. e4 e5 2. ♘f3 *',
    blocks: ['1. e4 e5 2. Nf3 *'],
    told: ['`Évent`', '`♘f3`'],
    tags: { Évent: 'x' },
    alone: 'it has neither such names nor figurines',
  },
  {
    number: 11,
    what: '5: `;` to the end of the line, with a brace',
    pgn: '1. e4 ;a {b\ne5 *',
    blocks: ['1. e4 {a {b} 1... e5 *'],
  },
  {
    number: 12,
    what: '5: a semicolon in braces',
    pgn: '1. e4 {a ; b} e5 *',
    blocks: ['1. e4 {a ; b} 1... e5 *'],
  },
  {
    number: 13,
    what: '5: braces do not nest',
    pgn: '1. e4 {a {b} e5 *',
    blocks: ['1. e4 {a {b} 1... e5 *'],
  },
  {
    number: 14,
    what: '5: what stands behind the first closing brace',
    pgn: '1. e4 {a {b} ccc} e5 *',
    blocks: ['1. e4 {a {b} 1... e5 *'],
    told: ['braces do not nest'],
    quoted: ['ccc}'],
  },
  {
    number: 15,
    what: '5: a comment over several lines',
    pgn: '1. e4 {one\ntwo\r\nthree} e5 *',
    blocks: ['1. e4 {one two three} 1... e5 *'],
  },
  {
    number: 16,
    what: '5: a comment before the tags',
    pgn: '{first words}\n[White "A"]\n\n1. e4 *',
    blocks: ['{first words} 1. e4 *'],
    tags: { White: 'A' },
  },
  {
    number: 17,
    what: '5: a comment before move 1',
    pgn: '[White "A"]\n\n{first words} 1. e4 *',
    blocks: ['{first words} 1. e4 *'],
  },
  {
    number: 18,
    what: '5: a comment between number and move',
    pgn: '1. e4 e5 2. {words} Nf3 *',
    blocks: ['1. e4 e5 {words} 2. Nf3 *'],
  },
  {
    number: 19,
    what: '5: a comment before a bracket',
    pgn: '1. e4 {words} (1. d4) e5 *',
    blocks: ['1. e4 {words} (1. d4) 1... e5 *'],
  },
  {
    number: 20,
    what: '5: a comment behind a bracket',
    pgn: '1. e4 ({words} 1. d4) {more} e5 *',
    blocks: ['1. e4 ({words} 1. d4) {more} 1... e5 *'],
  },
  {
    number: 21,
    what: '5: a comment behind the result',
    pgn: '1. e4 e5 * {words}\n',
    blocks: ['1. e4 e5 {words} *'],
  },
  {
    number: 22,
    what: '5: two comments side by side',
    pgn: '1. e4 {one} {two} e5 *',
    blocks: ['1. e4 {one} {two} 1... e5 *'],
  },
  {
    number: 23,
    what: '5: a comment within a move parts it in two',
    pgn: '1. d4 e{x}4 *',
    blocks: ['1. d4 {x} *'],
    told: ['“e” cannot be a move', 'No move follows the move number “4”'],
    quoted: ['e', '4'],
    alone: 'it takes `4` for nothing',
  },
  {
    number: 24,
    what: '5: an unclosed brace; the next game is read',
    pgn: '[White "A"]\n\n1. e4 {words\n\n[White "B"]\n\n1. d4 *\n',
    blocks: ['1. e4 {words}', '1. d4 *'],
    told: ['never closed', 'No result'],
    alone: 'it reads no further',
  },
  {
    number: 25,
    what: '6: `%` in column 1 takes the line out',
    pgn: '1. e4\n%secret 1. d4\ne5 *',
    blocks: ['1. e4 e5 *'],
    told: ['begins with %'],
    quoted: ['%secret 1. d4'],
  },
  {
    number: 26,
    what: '6: `%` elsewhere takes nothing out',
    pgn: '1. e4 %xyz\n e5 *',
    blocks: ['1. e4 e5 *'],
    told: ['not at the start of a line'],
    quoted: ['%xyz'],
    alone: 'it passes over words without a sign',
  },
  {
    number: 27,
    what: '6: `%` in column 1 within braces is text (the standard is silent)',
    pgn: '1. e4 {one\n%two} e5 *',
    blocks: ['1. e4 {one %two} 1... e5 *'],
    alone: 'it takes the line out',
  },
  {
    number: 28,
    what: '7: no space behind the number',
    pgn: '1.e4 e5 *',
    blocks: ['1. e4 e5 *'],
  },
  {
    number: 29,
    what: '7: `e4e5` is one symbol',
    pgn: '1. e4e5 *',
    blocks: [],
    told: ['`e4e5` cannot be played'],
    words: ['e4e5'],
    alone: 'it has no legality',
  },
  {
    number: 30,
    what: '7: brackets end themselves',
    pgn: '1. e4(1.d4)(1.c4) *',
    blocks: ['1. e4 (1. d4) (1. c4) *'],
  },
  { number: 31, what: '7: so does `*`', pgn: '1. e4*', blocks: ['1. e4 *'] },
  {
    number: 32,
    what: '7: two glyphs in a row',
    pgn: '1. e4 $1$14 *',
    blocks: ['1. e4 $1 $14 *'],
  },
  {
    number: 33,
    what: '7: a glyph and a move in a row',
    pgn: '1. e4 $3e5 *',
    blocks: ['1. e4 $3 e5 *'],
  },
  {
    number: 34,
    what: '7: quotes and backslashes within a string',
    pgn: '[Event "a \\"b\\" c\\\\d"]\n\n1. e4 *',
    blocks: ['1. e4 *'],
    tags: { Event: 'a "b" c\\d' },
  },
  {
    number: 35,
    what: '7: an empty string',
    pgn: '[Event ""]\n\n1. e4 *',
    blocks: ['1. e4 *'],
    tags: { Event: '' },
  },
  {
    number: 36,
    what: '7: a string of more than 255 characters',
    pgn: `[Event "${long}"]\n\n1. e4 *`,
    blocks: ['1. e4 *'],
    told: ['value of the tag', '255'],
    tags: { Event: long },
  },
  {
    number: 37,
    what: '7: `<` and `>` are reserved',
    pgn: '1. e4 <abc> e5 *',
    blocks: ['1. e4 e5 *'],
    told: ['“<abc>” cannot be a move'],
    quoted: ['<abc>'],
    alone: 'it passes over words without a sign',
  },
  {
    number: 38,
    what: '7: `/` and `!` in a result and a move',
    pgn: '1. e4! 1/2-1/2',
    blocks: ['1. e4 $1 1/2-1/2'],
  },
];
