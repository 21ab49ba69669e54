import { initialPosition } from '../chess/index.ts';

/** What a component of a page was given, by the names of its properties. */
export type ComponentProps = Readonly<Record<string, unknown>>;

export const componentNames = ['Board', 'Diagram', 'Moves', 'Exercise'] as const;
export type ComponentName = (typeof componentNames)[number];

/** A component as a chapter of a course that has nothing else, with the way back to what it was given. */
export interface ComponentSource {
  readonly text: string;
  /** The property that an offset of the text lies in, and how far in; a property as a whole where only that is known. */
  readonly from: (offset: number) => { readonly name: string; readonly at?: number } | undefined;
}

/** Where the position comes from, in the block's own words. */
const positions = ['fen', 'after', 'before', 'view'] as const;

/** What stands in the body of a block, by component. */
const bodies = {
  Diagram: ['caption', 'alt', 'mark', 'plan', 'threat', 'guard'],
  Exercise: ['ask', 'answer', 'also', 'wrong', 'hint'],
} as const;

export const propertyNames: Readonly<Record<ComponentName, readonly string[]>> = {
  Board: ['fen', 'after', 'view', 'moves', 'show', 'at', 'course'],
  Moves: ['fen', 'after', 'view', 'moves', 'show', 'at', 'course'],
  Diagram: [...positions, ...bodies.Diagram, 'at', 'course'],
  Exercise: [...positions, ...bodies.Exercise, 'at', 'course'],
};

/** Writes a component as a block of the course language, so that it is read, checked and drawn as one. */
export function writeSource(name: ComponentName, props: ComponentProps): ComponentSource {
  let text = '';
  const spans: {
    readonly name: string;
    readonly start: number;
    readonly end: number;
    readonly exact: boolean;
  }[] = [];
  const put = (written: string, property?: string, exact = false) => {
    if (property !== undefined) {
      spans.push({ name: property, start: text.length, end: text.length + written.length, exact });
    }
    text += written;
  };
  const kind = name === 'Diagram' ? 'diagram' : name === 'Exercise' ? 'exercise' : 'moves';
  put(`\`\`\`\`${kind}`);
  // Moves that lead to the position are the first of the moves.
  const given = kind === 'moves' ? positions.filter((each) => each !== 'after') : positions;
  for (const each of given) {
    const value = stringOf(props[each]);
    if (value === undefined) continue;
    put(` ${each}="`);
    put(value.replaceAll('"', ''), each, true);
    put('"');
  }
  // Where nothing says the position it is the one that games begin with.
  const isStart = ['fen', 'after', 'before'].every((each) => stringOf(props[each]) === undefined);
  if (kind !== 'moves' && isStart) put(` fen="${initialPosition.fen}"`);
  put('\n');
  if (kind === 'moves') {
    for (const each of ['after', 'moves'] as const) {
      const value = stringOf(props[each]);
      if (value === undefined) continue;
      put(value, each, true);
      put('\n');
    }
  } else {
    for (const each of bodies[name as keyof typeof bodies]) {
      if (props[each] === undefined) continue;
      put(`${each}: `);
      put(JSON.stringify(props[each]), each);
      put('\n');
    }
  }
  put('````\n');
  return {
    text,
    from(offset) {
      const span = spans.find(({ start, end }) => start <= offset && offset <= end);
      return span && { name: span.name, ...(span.exact && { at: offset - span.start }) };
    },
  };
}

export function stringOf(value: unknown): string | undefined {
  return typeof value === 'string' && value.trim() !== '' ? value : undefined;
}
