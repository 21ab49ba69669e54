import { claimsAt, engineOf, lineText, nameOfMove, readFacts, scoreText } from '../check/index.ts';
import { type Color, type Position, sideName, sideToMove } from '../chess/index.ts';
import type { EngineFacts } from '../facts/index.ts';
import {
  adviceOf,
  blockAt,
  type Course,
  documentsOf,
  type MoveNode,
  type NodeRef,
} from '../model/index.ts';
import type { SourceFile } from '../read/index.ts';
import type { Asked } from './asked.ts';
import { textBoard } from './text-board.ts';
import { locationOf, placeOfRef } from './to-client.ts';

const most = 8;

/** A position in Markdown: its board, what the course plays there, where else it stands, what is known of it. */
export function positionCard(
  {
    position,
    node,
    ref,
    view,
  }: {
    readonly position: Position;
    readonly node: MoveNode;
    readonly ref?: NodeRef;
    readonly view: Color;
  },
  asked: Asked,
  course: Course,
): string {
  const parent =
    ref && node.parent !== undefined ? blockAt(course, ref)?.nodes[node.parent] : undefined;
  const name =
    node.move && parent?.position ? nameOfMove(parent.position, node.move.san) : node.move?.san;
  const lines = [
    ...(name === undefined ? [] : [`**${name}**`]),
    `\`\`\`text\n${textBoard(position, view)}\n\`\`\``,
    `${sideName(sideToMove(position))} to move. ${played(position, course)}`.trim(),
    ...names(position, course),
    ...elsewhere(position, ref, asked, course),
    ...truths({ position, before: parent?.position, ref, node }, course),
    ...engine(position, asked),
    `\`${position.fen}\``,
  ];
  return lines.join('\n\n');
}

function played(position: Position, course: Course): string {
  const advised = new Set(
    adviceOf(course)
      .get(position.key)
      ?.map(({ san }) => san),
  );
  const moves = course.graph[position.key]?.moves ?? [];
  const others = moves
    .filter(({ san }) => !advised.has(san))
    .map(({ san }) => nameOfMove(position, san));
  const advice = [...advised].map((san) => `**${nameOfMove(position, san)}**`);
  const isOwn = sideToMove(position) === course.settings.side;
  return [
    ...(advice.length > 0 ? [`The course advises ${advice.join(' and ')}.`] : []),
    ...(others.length > 0
      ? [`${isOwn ? 'It mentions' : 'The course covers'} ${others.join(', ')}.`]
      : []),
  ].join(' ');
}

function names(position: Position, course: Course): string[] {
  const here = documentsOf(course).flatMap((chapter) =>
    chapter.names.filter((name) => name.position?.key === position.key),
  );
  if (here.length === 0) return [];
  const said = here.map(
    ({ name, title }) => `\`${name}\`${title === undefined ? '' : ` (${title})`}`,
  );
  return [`Named ${said.join(', ')}.`];
}

function elsewhere(
  position: Position,
  ref: NodeRef | undefined,
  asked: Asked,
  course: Course,
): string[] {
  const others = (course.graph[position.key]?.at ?? []).filter(
    (at) => at.chapter !== ref?.chapter || at.block !== ref.block || at.node !== ref.node,
  );
  const places = others.flatMap((at) => placeOfRef(at, course) ?? []);
  if (places.length === 0) return [];
  const shown = places.slice(0, most).map((place) => {
    const { uri } = locationOf(place, asked.desk, asked.session);
    return `[${place.file.replace('chapters/', '')}:${place.start.line}](${uri}#L${place.start.line})`;
  });
  const more = places.length > most ? ` and ${places.length - most} more` : '';
  return [`Also in ${shown.join(', ')}${more}.`];
}

function truths(
  {
    position,
    before,
    ref,
    node,
  }: {
    readonly position: Position;
    readonly before: Position | undefined;
    readonly ref: NodeRef | undefined;
    readonly node: MoveNode;
  },
  course: Course,
): string[] {
  const block = ref && blockAt(course, ref);
  const tree = block && { nodes: block.nodes, castled: block.castled, index: node.index };
  const found = claimsAt({ position, before, tree }, course, { most });
  return found.length === 0 ? [] : [`True here: ${found.map((one) => `\`${one}\``).join(', ')}.`];
}

const facts = new WeakMap<readonly SourceFile[], EngineFacts>();

function engine(position: Position, { desk }: Asked): string[] {
  const files = desk.facts();
  const known = facts.get(files) ?? readFacts(files).facts;
  facts.set(files, known);
  const fact = known.at(position.key);
  if (!fact) return [];
  const lines = fact.lines.map((line) => `- ${scoreText(line.score)} ${lineText(position, line)}`);
  return [`${engineOf(fact)}:\n\n${lines.join('\n')}`];
}
