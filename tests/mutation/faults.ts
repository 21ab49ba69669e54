/**
 * Plants faults in sound courses, one at a time. Each kind says which of its faults change the
 * truth for sure (`must`): the check has to find those. The others may leave a course that is
 * sound in another way, such as another good legal move that nobody contradicts.
 */
import { legalMoves, type Position, sideToMove } from '../../src/chess/index.ts';
import type { Place } from '../../src/diagnostics/index.ts';
import { blockAt, type MoveNode, type MovesBlock, nodeAt } from '../../src/model/index.ts';
import { blockNames } from '../../src/read/index.ts';
import { type CourseInMemory, textOf } from './course-in-memory.ts';
import { faultsOfExercises } from './faults-of-exercises.ts';
import { faultsOfPatterns } from './faults-of-patterns.ts';

export interface Fault {
  readonly file: string;
  readonly text: string;
  /** What was planted, for the report of one that slipped through. */
  readonly note: string;
  readonly must: boolean;
}

export interface FaultKind {
  readonly name: string;
  /** The rules that name such a fault: a finding of another rule is counted apart. */
  readonly rules: readonly string[];
  /** Why a fault of this kind may go unfound, where that is so in principle. */
  readonly limit?: string;
  readonly plant: (course: CourseInMemory) => Iterable<Fault>;
}

export interface Spot {
  readonly block: MovesBlock;
  readonly node: MoveNode;
  readonly parent: MoveNode;
  readonly before: Position;
}

export function* spots({ course }: CourseInMemory): Generator<Spot> {
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of block.nodes) {
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        const before = parent?.position;
        if (node.move && node.written && parent && before) yield { block, node, parent, before };
      }
    }
  }
}

export function replace(
  course: CourseInMemory,
  place: Pick<Place, 'file' | 'start' | 'end'>,
  text: string,
  note: string,
  must: boolean,
): Fault {
  const whole = textOf(course, place.file);
  const changed = whole.slice(0, place.start.offset) + text + whole.slice(place.end.offset);
  const line = place.start.line;
  return { file: place.file, text: changed, note: `${place.file}:${line}: ${note}`, must };
}

/** The text with blanks for fenced code that is only shown: it is no part of the course. */
function withoutSource(text: string): string {
  const fence = /^(`{3,}|~{3,})([^\n]*)\n[\s\S]*?^\1[`~]*[ \t]*$/gm;
  return text.replace(fence, (code: string, _marks: string, info: string) =>
    blockNames.some((name) => info.trim().split(/\s/)[0] === name)
      ? code
      : code.replace(/[^\n]/g, ' '),
  );
}

/** Every place where a pattern stands in a chapter. */
export function* matches(
  course: CourseInMemory,
  pattern: RegExp,
  /** Whether it is looked for in inline code too. */
  within: 'prose' | 'code' = 'prose',
) {
  for (const { path, text } of course.files.chapters) {
    const plain = withoutSource(text);
    const prose =
      within === 'code'
        ? plain
        : plain.replace(/``?[^`\n]+``?/g, (code) => ' '.repeat(code.length));
    for (const match of prose.matchAll(pattern)) {
      const at = (offset: number) => ({
        line: text.slice(0, offset).split('\n').length,
        column: 0,
        offset,
      });
      const place = { file: path, start: at(match.index), end: at(match.index + match[0].length) };
      yield { match, place };
    }
  }
}

function otherMoves({ before, node }: Spot): string[] {
  return legalMoves(before).filter((san) => san !== node.move?.san);
}

function pick<T>(list: readonly T[], seed: number): T | undefined {
  return list[(seed * 7919) % list.length];
}

/** What may follow from a move that is another than was meant: all that speaks of the board. */
const onTheBoard = [
  'move-illegal',
  'move-ambiguous',
  'move-suffix',
  'prose-move-unknown',
  'claim-false',
  'arrow-false',
  'advice-conflict',
  'reply-unanswered',
  'same-not-same',
  'transposition-untold',
  'line-repeated',
  'assessment-conflict',
  'exercise-wrong',
  'pattern-not-there',
  'prose-move-sign',
  'link-move',
  'material-en-prise',
];

export const faultKinds: readonly FaultKind[] = [
  {
    name: 'a move that is illegal there',
    rules: ['move-illegal'],
    *plant(course) {
      for (const spot of spots(course)) {
        const legal = new Set(legalMoves(spot.before).map((san) => san.replace(/[+#]/, '')));
        const wrong = ['Kd5', 'Qh8', 'Na5', 'Bh7', 'Rd6', 'e6', 'b4'].find(
          (san) => !legal.has(san),
        );
        if (wrong && spot.node.written) {
          yield replace(
            course,
            spot.node.written.place,
            wrong,
            `${spot.node.move?.san} -> ${wrong}`,
            true,
          );
        }
      }
    },
  },
  {
    name: 'another legal move',
    rules: onTheBoard,
    limit:
      'another good move that leads into nothing else and that no text contradicts is a course of its own',
    *plant(course) {
      for (const spot of spots(course)) {
        const other = pick(otherMoves(spot), spot.node.index);
        if (other && spot.node.written) {
          yield replace(
            course,
            spot.node.written.place,
            other,
            `${spot.node.move?.san} -> ${other}`,
            false,
          );
        }
      }
    },
  },
  {
    name: 'two moves of one side swapped',
    rules: onTheBoard,
    limit: 'where both orders are legal and meet again, the other order is as true',
    *plant(course) {
      for (const { block, node } of spots(course)) {
        const reply = block.nodes[node.children[0] ?? -1];
        const next = block.nodes[reply?.children[0] ?? -1];
        const [a, b] = [node.written, next?.written];
        if (!a || !b || !node.move || !next?.move || a.place.file !== b.place.file) continue;
        const whole = textOf(course, a.place.file);
        const text =
          whole.slice(0, a.place.start.offset) +
          b.san +
          whole.slice(a.place.end.offset, b.place.start.offset) +
          a.san +
          whole.slice(b.place.end.offset);
        yield {
          file: a.place.file,
          text,
          note: `${a.place.file}:${a.place.start.line}: ${a.san} and ${b.san}`,
          must: false,
        };
      }
    },
  },
  {
    name: 'a changed move number',
    rules: ['move-number'],
    *plant(course) {
      for (const { node } of spots(course)) {
        const number = node.written?.number;
        if (!number) continue;
        const text = number.text.replace(/\d+/, String(number.value + 1));
        yield replace(course, number.place, text, `${number.text} -> ${text}`, true);
      }
    },
  },
  {
    name: 'a dropped answer',
    rules: ['reply-unanswered'],
    *plant(course) {
      const { side } = course.course.settings;
      for (const { block, node, parent } of spots(course)) {
        if (side === 'both' || node.move?.color !== side || node.children.length > 0) continue;
        if (node.after.length > 0 || parent.children.length > 1 || !node.written || !parent.move)
          continue;
        const key = parent.position?.key ?? '';
        const elsewhere = (course.course.graph[key]?.at.length ?? 0) > 1;
        const closed =
          parent.statements.length > 0 || parent.glyphs.length > 0 || parent.after.length > 0;
        const bad = linesUp(block, node).some(({ glyphs }) =>
          glyphs.some((nag) => [2, 4, 6].includes(nag)),
        );
        const { start } = node.written.number?.place ?? node.written.place;
        const end = node.written.glyphs.at(-1)?.place.end ?? node.written.place.end;
        yield replace(
          course,
          { file: node.written.place.file, start, end },
          '',
          `${node.move.san} dropped`,
          !elsewhere && !closed && !bad,
        );
      }
    },
  },
  {
    name: 'a label moved to the move before',
    rules: [
      'same-not-same',
      'move-illegal',
      'move-ambiguous',
      'move-number',
      'transposition-untold',
      'claim-false',
      'arrow-false',
      'pattern-not-there',
      'exercise-wrong',
      'prose-move-unknown',
    ],
    limit: 'a name that only links lead to may stand anywhere: a link says nothing of the board',
    *plant(course) {
      for (const { match, place } of matches(course, /:here\[([^\]]+)\]/g)) {
        const name = match[1] ?? '';
        const ref = course.course.labels[name]?.ref;
        const block = ref && blockAt(course.course, ref);
        const node = block?.nodes[ref?.node ?? -1];
        const before = block?.nodes[node?.parent ?? -1]?.written;
        if (
          !before ||
          before.place.file !== place.file ||
          before.place.end.offset > place.start.offset
        )
          continue;
        const whole = textOf(course, place.file);
        const text =
          whole.slice(0, before.place.end.offset) +
          ` {:here[${name}]}` +
          whole.slice(before.place.end.offset, place.start.offset) +
          whole.slice(place.end.offset);
        const used = new RegExp(`from="${name}"|:same\\[${name}\\]`).test(
          course.files.chapters.map((chapter) => chapter.text).join('\n'),
        );
        yield {
          file: place.file,
          text,
          note: `${place.file}:${place.start.line}: ${name}`,
          must: used,
        };
      }
    },
  },
  {
    name: 'a name that is used, taken away',
    rules: ['label-unknown'],
    *plant(course) {
      for (const { match, place } of matches(course, /:here\[([^\]]+)\]/g)) {
        const name = match[1] ?? '';
        const all = course.files.chapters.map((chapter) => chapter.text).join('\n');
        const used = new RegExp(
          `(?:from|at)="${name}"|:(?:same|later)\\[${name}\\]|\\(pos:${name}\\)`,
        ).test(all);
        if (used) yield replace(course, place, '', `:here[${name}] taken away`, true);
      }
    },
  },
  {
    name: 'a denied claim',
    rules: ['claim-false'],
    *plant(course) {
      for (const { match, place } of matches(course, /:claim\[([^\]]+)\]/g)) {
        const [first = '', ...others] = (match[1] ?? '').split(' and ');
        const [, after = '', claim = ''] = /^(after [^:]*: )?(.*)$/s.exec(first) ?? [];
        const denied = after + (claim.startsWith('not ') ? claim.slice(4) : `not ${claim}`);
        yield replace(course, place, `:claim[${[denied, ...others].join(' and ')}]`, denied, true);
      }
    },
  },
  {
    name: 'a claim with its piece one file aside',
    rules: ['claim-false'],
    limit: 'the claim may be true of the neighbouring square too',
    *plant(course) {
      for (const { match, place } of matches(
        course,
        /:claim\[([^\]]*?)([a-h])([1-8])([^\]]*)\]/g,
      )) {
        const [, head = '', file = 'a', rank = '1', tail = ''] = match;
        const aside = 'bcdefghg'['abcdefgh'.indexOf(file)] ?? 'a';
        yield replace(
          course,
          place,
          `:claim[${head}${aside}${rank}${tail}]`,
          `${match[0]} on the ${aside}-file`,
          false,
        );
      }
    },
  },
  {
    name: 'a wrong answer in an exercise',
    rules: ['exercise-wrong'],
    limit: 'where the course advises nothing in the position, only the author knows the answer',
    *plant(course) {
      const { side } = course.course.settings;
      for (const chapter of course.course.chapters) {
        for (const block of chapter.blocks) {
          if (block.kind !== 'exercise' || !block.position) continue;
          const listed = [...block.answer, ...block.also, ...block.wrong].map(
            (line) => line[1]?.move?.san,
          );
          const graph = course.course.graph[block.position.key];
          const advised = side === sideToMove(block.position) && (graph?.moves.length ?? 0) > 0;
          for (const line of block.answer) {
            const first = line[1];
            const other = pick(
              legalMoves(block.position).filter((san) => !listed.includes(san)),
              block.place.start.line,
            );
            if (!first?.written || !other) continue;
            yield replace(
              course,
              first.written.place,
              other,
              `${first.move?.san} -> ${other}`,
              advised,
            );
          }
        }
      }
    },
  },
  {
    name: 'a changed recommendation where lines meet',
    rules: ['advice-conflict'],
    *plant(course) {
      const { side } = course.course.settings;
      for (const spot of spots(course)) {
        const { before, node, parent } = spot;
        if (side === 'both' || sideToMove(before) !== side || parent.children[0] !== node.index)
          continue;
        const rejected =
          node.glyphs.some((nag) => [2, 4, 6].includes(nag)) ||
          node.statements.some(({ name }) => name === 'option');
        const twins =
          course.course.graph[before.key]?.moves.find(({ san }) => san === node.move?.san)?.at
            .length ?? 0;
        const other = pick(otherMoves(spot), node.index + 1);
        if (rejected || twins < 2 || !other || !node.written) continue;
        // Another place plays the same move as a first move: the two now contradict each other.
        const firsts = course.course.graph[before.key]?.at.filter((ref) => {
          const block = blockAt(course.course, ref);
          const first = block?.nodes[block.nodes[ref.node]?.children[0] ?? -1];
          return first?.move?.san === node.move?.san;
        });
        yield replace(
          course,
          node.written.place,
          other,
          `${node.move?.san} -> ${other}`,
          (firsts?.length ?? 0) > 1,
        );
      }
    },
  },
  {
    name: 'a broken promise',
    rules: ['label-unknown', 'label-not-later'],
    *plant(course) {
      const names = Object.keys(course.course.labels);
      for (const { match, place } of matches(course, /:later\[([^\]]+)\]/g)) {
        const [first = 'nowhere'] = names;
        for (const name of [`${match[1]}x`, ...(names.includes(first) ? [] : [first])]) {
          yield replace(course, place, `:later[${name}]`, `${match[1]} -> ${name}`, true);
        }
      }
    },
  },
  {
    name: 'a transposition to another position',
    rules: ['same-not-same'],
    *plant(course) {
      const { labels } = course.course;
      const keyOf = (name: string) => {
        const ref = labels[name]?.ref;
        return ref && nodeAt(course.course, ref)?.position?.key;
      };
      for (const { match, place } of matches(course, /:same\[([^\]]+)\]/g)) {
        const name = match[1] ?? '';
        const other = Object.keys(labels).find((label) => keyOf(label) !== keyOf(name));
        if (other) yield replace(course, place, `:same[${other}]`, `${name} -> ${other}`, true);
      }
    },
  },
  {
    name: 'a meeting of two orders no longer told',
    rules: ['transposition-untold'],
    limit: 'another place may tell it too',
    *plant(course) {
      for (const { match, place } of matches(course, /:same\[([^\]]+)\]/g)) {
        yield replace(course, place, '', match[0], false);
      }
    },
  },
  ...faultsOfExercises,
  ...faultsOfPatterns,
  {
    name: 'words that name another piece on a square',
    rules: ['words-false'],
    limit:
      'words of plans, conditions and other lines are left alone, and so is any piece, not "the" piece',
    *plant(course) {
      const others: Readonly<Record<string, string>> = {
        knight: 'bishop',
        bishop: 'knight',
        rook: 'queen',
        queen: 'rook',
        pawn: 'knight',
      };
      for (const { match, place } of matches(
        course,
        /(?<=\b(?:the|The|White's|Black's|his|our) (?:[a-z]+ )?)(knight|bishop|rook|queen|pawn)(?= on [a-h][1-8])/g,
      )) {
        const other = others[match[0]] ?? 'king';
        yield replace(course, place, other, `${match[0]} -> ${other}`, false);
      }
    },
  },
  {
    name: 'words that name a piece two files aside',
    rules: ['words-false'],
    limit: 'such a piece may stand there too; and see above',
    *plant(course) {
      for (const { match, place } of matches(
        course,
        /(?<=\b(?:the|The|White's|Black's|his|our) (?:[a-z]+ )?(?:knight|bishop|rook|queen|pawn) on )[a-h](?=[1-8])/g,
      )) {
        const aside = 'cdefghef'['abcdefgh'.indexOf(match[0])] ?? 'a';
        yield replace(
          course,
          place,
          aside,
          `on the ${match[0]}-file -> on the ${aside}-file`,
          false,
        );
      }
    },
  },
  {
    name: 'words that name the other colour',
    rules: ['words-false'],
    limit: 'see above',
    *plant(course) {
      for (const { match, place } of matches(
        course,
        /\b(?:[Ww]hite|[Bb]lack)(?:'s)?(?= (?:[a-z-]+ )?(?:knight|bishop|rook|queen|pawn)s? on [a-h][1-8])/g,
      )) {
        const isWhite = /white/i.test(match[0]);
        const other = match[0].replace(/white|black/i, isWhite ? 'black' : 'white');
        yield replace(course, place, other, `${match[0]} -> ${other}`, false);
      }
    },
  },
  {
    name: 'a move in the words of a table with another square',
    rules: ['words-false'],
    limit: 'the other move may be legal too',
    *plant(course) {
      for (const { match, place } of matches(course, /(?<=^\|.*\d\.+[NBRQ]x?[a-h])[1-8]/gm)) {
        const rank = String((Number(match[0]) + 3) % 8 || 8);
        yield replace(course, place, rank, `rank ${match[0]} -> ${rank}`, false);
      }
    },
  },
];

function linesUp(block: MovesBlock, last: MoveNode): MoveNode[] {
  const line = [last];
  for (let node = last; node.parent !== undefined; ) {
    const parent = block.nodes[node.parent];
    if (!parent) break;
    line.push(parent);
    node = parent;
  }
  return line;
}
