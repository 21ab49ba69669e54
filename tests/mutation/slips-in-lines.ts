/** Slips that authors make in lines, verdicts and in the words around them. */
import {
  exchangeOf,
  isMoveFault,
  legalMoves,
  type Position,
  playMove,
} from '../../src/chess/index.ts';
import { type Course, isAdvice, isMarkedBad } from '../../src/model/index.ts';
import { isAssessment } from '../../src/movetext/index.ts';
import { type CourseInMemory, textOf } from './course-in-memory.ts';
import { type Fault, type FaultKind, matches, replace, spots } from './faults.ts';

/** The chapter with something written behind its end. */
function append(
  course: CourseInMemory,
  file: string,
  text: string,
  note: string,
  must = true,
): Fault {
  const whole = textOf(course, file);
  return { file, text: `${whole.trimEnd()}\n\n${text}\n`, note: `${file}: ${note}`, must };
}

/** The same at the end of two chapters: what stands before it matters little. */
function* inEach(
  course: CourseInMemory,
  blocks: Readonly<Record<string, string>>,
): Generator<Fault> {
  for (const { path } of course.files.chapters.slice(0, 2)) {
    for (const [note, text] of Object.entries(blocks)) yield append(course, path, text, note);
  }
}

/** The same where the course is for one side. */
function inOwn(course: CourseInMemory, blocks: Readonly<Record<string, string>>): Iterable<Fault> {
  return own(course) === 'both' ? [] : inEach(course, blocks);
}

/** Named positions that a chapter gives to moves of its blocks, and the number and name of the move. */
function* namedMoves({ course }: CourseInMemory) {
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const [name] = node.labels;
        if (name !== undefined && node.move) yield { name, move: node.move, chapter };
      }
    }
  }
}

function numbered({ number, color }: { number: number; color: string }, san: string): string {
  return `${number}${color === 'white' ? '.' : '...'}${san}`;
}

const fence = (attributes: string, text: string) => `\`\`\`${attributes}\n${text}\n\`\`\``;

/** Whether the course's side is advised to play a move there, and in one place alone. */
function* advisedOnce(course: CourseInMemory) {
  const { settings, graph } = course.course;
  for (const spot of spots(course)) {
    const { block, node, parent, before } = spot;
    if (settings.side === 'both' || !isAdvice(node, parent, settings.side)) continue;
    if (isBehindBad(block.nodes, node.index, settings.side)) continue;
    const twins = graph[before.key]?.moves.flatMap(({ at }) => at) ?? [];
    if (twins.length === parent.children.length) yield spot;
  }
}

function isBehindBad(
  nodes: Course['chapters'][number]['blocks'][number]['nodes'],
  index: number,
  side: string,
): boolean {
  for (let node = nodes[index]; node; node = nodes[node.parent ?? -1]) {
    const isOption = node.statements.some(({ name }) => name === 'option');
    if (node.move?.color === side && (isMarkedBad(node) || isOption)) return true;
  }
  return false;
}

/** The legal move that loses most on the square that it goes to, as a student would see at once. */
function worstMove(position: Position): string | undefined {
  let worst: { san: string; gain: number } | undefined;
  for (const san of legalMoves(position)) {
    const move = playMove(position, san);
    if (isMoveFault(move) || /[+#]/.test(san)) continue;
    const gain = exchangeOf(position, move)?.gain ?? 0;
    if (!worst || gain < worst.gain) worst = { san, gain };
  }
  return worst && worst.gain <= -3 ? worst.san : undefined;
}

export const slipsInLines: readonly FaultKind[] = [
  {
    name: 'a result against the mate on the board',
    rules: ['game-result'],
    plant: (course) =>
      inEach(course, {
        'behind the moves': fence('game', '1. f3 e5 2. g4 Qh4# 1-0'),
        'in the tag alone': fence('game', '[Result "1/2-1/2"]\n\n1. f3 e5 2. g4 Qh4#'),
        'of a stalemate': fence(
          'game',
          '[SetUp "1"]\n[FEN "7k/5K2/8/6Q1/8/8/8/8 w - - 0 1"]\n\n1. Qg6 1-0',
        ),
      }),
  },
  {
    name: 'two verdicts behind one move',
    rules: ['assessment-conflict'],
    *plant(course) {
      for (const { node } of spots(course)) {
        const nag = node.glyphs.find(isAssessment);
        if (nag === undefined || !node.written) continue;
        const other = nag === 18 || nag === 20 ? '$19' : '$18';
        const san = node.written.place;
        yield replace(course, { ...san, start: san.end }, ` ${other}`, `${other} added`, true);
      }
    },
  },
  {
    name: 'a verdict for the mated side',
    rules: ['assessment-conflict'],
    plant: (course) =>
      inEach(course, {
        'White is mated': fence('moves fen="7k/8/8/8/8/1r6/r7/6K1 b - - 0 1"', '1... Rb1# +-'),
        'Black is mated': fence('moves fen="6k1/1R6/R7/8/8/8/8/K7 w - - 0 1"', '1. Ra8# ∓'),
      }),
  },
  {
    name: 'a line that goes on behind its end',
    rules: ['end-goes-on'],
    plant: (course) => inEach(course, { 'one move': fence('moves', '1. Nh3 {:end[x]} Nh6') }),
  },
  {
    name: 'a line told again by another order of moves',
    rules: ['line-repeated'],
    plant: (course) =>
      inEach(course, {
        'two knights':
          `${fence('moves fen="4k3/pppppppp/8/8/8/8/PPPPPPPP/1N2K1N1 w - - 0 1"', '1. Nf3 a6 {:end[x]} 2. Nc3 {:here[slip-orders]} b6 3. e4 d6 {:end[x]}')}\n\n` +
          fence(
            'moves fen="4k3/pppppppp/8/8/8/8/PPPPPPPP/1N2K1N1 w - - 0 1"',
            '1. Nc3 {:option[x]} a6 2. Nf3 {:same[slip-orders]} b6 3. e4 d6 {:end[x]}',
          ),
      }),
  },
  {
    name: 'a line told again from another start',
    rules: ['line-repeated'],
    plant: (course) =>
      inEach(course, {
        'its second half first':
          `${fence('moves fen="4k3/pppppppp/p7/8/8/5N2/PPPPPPPP/1N2K3 w - - 0 2"', '2. Nc3 b6 3. e4 d6 {:end[x]}').replace('pppppppp/p7', '1ppppppp/p7')}\n\n` +
          fence(
            'moves fen="4k3/pppppppp/8/8/8/8/PPPPPPPP/1N2K1N1 w - - 0 1"',
            '1. Nf3 a6 2. Nc3 b6 3. e4 d6 {:end[x]}',
          ),
      }),
  },
  {
    name: 'a capture sign that a move in the text has not',
    rules: ['prose-move-sign'],
    *plant(course) {
      for (const { fault } of proseMoves(course, (san) =>
        /x/.test(san) || !/^[KQRBN]/.test(san)
          ? undefined
          : san.replace(/(.[a-h]?[1-8]?)([a-h][1-8])/, '$1x$2'),
      )) {
        yield fault;
      }
    },
  },
  {
    name: 'a capture sign that a move in the text lacks',
    rules: ['prose-move-sign'],
    *plant(course) {
      for (const { fault } of proseMoves(course, (san) =>
        /^[KQRBN].*x/.test(san) ? san.replace('x', '') : undefined,
      )) {
        yield fault;
      }
    },
  },
  {
    name: 'a check that a move in the text does not give',
    rules: ['prose-move-sign'],
    *plant(course) {
      for (const { fault } of proseMoves(course, (san) =>
        /[+#]/.test(san) ? undefined : `${san}+`,
      )) {
        yield fault;
      }
    },
  },
  {
    name: 'a reply that only a bad move answers',
    rules: ['reply-unanswered', 'advice-conflict'],
    *plant(course) {
      for (const { node, parent } of advisedOnce(course)) {
        if (parent.children.length > 1 || !node.written || !parent.move) continue;
        if (parent.glyphs.some(isAssessment) || parent.statements.length > 0) continue;
        const { end } = node.written.place;
        const at = { ...node.written.place, start: end };
        yield replace(course, at, '??', `${node.move?.san}??`, parent.after.length === 0);
      }
    },
  },
  {
    name: 'a reply that a promise of something else closes',
    rules: ['reply-unanswered', 'label-not-later'],
    plant: (course) =>
      inOwn(course, {
        'a pawn that has gone on': fence(
          `moves fen="4k3/pppppppp/8/8/4P3/8/PPPP1PPP/4K3 ${own(course) === 'white' ? 'b' : 'w'} - - 0 1"`,
          own(course) === 'white' ? '1... e5 {:later[slip-later]}' : '1. d4 {:later[slip-later]}',
        ).concat(
          '\n\n',
          fence(
            'moves fen="4k3/pppppppp/8/8/8/8/PPPPPPPP/4K3 w - - 0 1"',
            '1. c4 {:here[slip-later]} c5 {:end[x]}',
          ),
        ),
      }),
  },
  {
    name: 'a reply that leads back to itself',
    rules: ['reply-unanswered'],
    plant: (course) =>
      inOwn(course, {
        'a link': fence(
          `moves fen="4k3/pppppppp/8/8/4P3/8/PPPP1PPP/4K3 ${own(course) === 'white' ? 'b' : 'w'} - - 0 1"`,
          own(course) === 'white'
            ? '1... e5 {:here[slip-self] [here](pos:slip-self)}'
            : '1. d4 {:here[slip-self] :same[slip-self]}',
        ),
      }),
  },
  {
    name: 'a move advised here and called bad there',
    rules: ['advice-conflict'],
    *plant(course) {
      const { side } = course.course.settings;
      if (side === 'both') return;
      for (const { before, node, block } of advisedOnce(course)) {
        if (!node.move) continue;
        const text = fence(
          `moves fen="${before.fen}"`,
          `${numbered(node.move, ` ${node.move.san}`)}?!`,
        );
        yield append(course, block.chapter, text, `${node.move.san}?!`);
      }
    },
  },
  {
    name: 'a link to a heading that is not there',
    rules: ['link-unknown'],
    plant: (course) => inEach(course, { 'a heading': 'See [above](#no-heading-of-this-name).' }),
  },
  {
    name: 'a link whose words name another move',
    rules: ['link-move'],
    *plant(course) {
      for (const { name, move, chapter } of namedMoves(course)) {
        const other = legalMoves(beforeOf(course, chapter.file, name) ?? move.after).find(
          (san) => /^[KQBN]?[a-h][1-8]$/.test(san) && san !== move.san,
        );
        if (!other) continue;
        const words = numbered(move, other);
        const note = `${words} for ${numbered(move, move.san)}`;
        yield append(course, chapter.file, `See [${words}](pos:${name}).`, note, false);
      }
    },
  },
  {
    name: 'a date that is none',
    rules: ['tag-invalid'],
    plant: (course) =>
      inEach(course, {
        '30 February': fence('game', '[Date "2025.02.30"]\n\n1. Nh3 Nh6 *'),
        'another form': fence('game', '[Date "31.12.2025"]\n\n1. Nh3 Nh6 *'),
      }),
  },
  {
    name: 'an ECO code that is none',
    rules: ['tag-invalid'],
    plant: (course) =>
      inEach(course, {
        'no such letter': fence('game', '[ECO "F20"]\n\n1. Nh3 Nh6 *'),
        'three figures': fence('game', '[ECO "B123"]\n\n1. Nh3 Nh6 *'),
      }),
  },
  {
    name: 'advice that leaves a piece to be taken',
    rules: ['material-en-prise'],
    limit: 'a fork or a check may win it back, and words near it may speak of a sacrifice',
    *plant(course) {
      for (const { before, node } of advisedOnce(course)) {
        const worst = worstMove(before);
        if (!worst || !node.written || node.children.length > 0) continue;
        yield replace(course, node.written.place, worst, `${node.move?.san} -> ${worst}`, false);
      }
    },
  },
  {
    name: 'a verdict against the material',
    rules: ['assessment-material'],
    plant: (course) =>
      inEach(course, {
        'a rook less': fence('moves fen="r5k1/5ppp/8/8/8/8/5PPP/6K1 w - - 0 1"', '1. h3 h6 +-'),
        'a queen less': fence('moves fen="6k1/5ppp/8/8/8/8/5PPP/3Q2K1 w - - 0 1"', '1. h3 h6 -+'),
      }),
  },
];

function own({ course }: CourseInMemory): string {
  return course.settings.side;
}

/** The position in which the move of a name was played. */
function beforeOf({ course }: CourseInMemory, file: string, name: string): Position | undefined {
  const ref = course.labels[name]?.ref;
  const chapter = course.chapters.find((each) => each.file === file);
  const nodes = chapter?.blocks.find(({ key }) => key === ref?.block)?.nodes;
  const node = nodes?.[ref?.node ?? -1];
  return nodes?.[node?.parent ?? -1]?.position;
}

/** Single moves in inline code, with another spelling; undefined where there is none of that kind. */
function* proseMoves(course: CourseInMemory, respell: (san: string) => string | undefined) {
  const code = /`(\d+\.(?:\.\.)?)([^`\s]+)`/g;
  for (const { match, place } of matches(course, code, 'code')) {
    const [whole, number = '', san = ''] = match;
    const other = respell(san);
    if (!other || !/^(?:[KQRBN]|[a-h])[a-h1-8x=]*[QRBN]?[+#]?$|^O-O/.test(san)) continue;
    yield { fault: replace(course, place, `\`${number}${other}\``, `${whole} -> ${other}`, false) };
  }
}
