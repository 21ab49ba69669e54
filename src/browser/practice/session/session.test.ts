import { describe, expect, test } from 'vitest';
import { smallCourse } from '../testing/small-course.ts';
import { pathOn, pathTo, practiceCourse } from './practice-course.ts';
import {
  begin,
  giveHint,
  goOn,
  leaveOut,
  type Session,
  showMove,
  type Task,
  tryMove,
} from './session.ts';

const all = new Set([0, 1]);

/** 1.e4 e5 2.Nf3 (2.Bc4 is mentioned, 2.Qh5 warned of) Nc6 3.Bb5, and 1...c5 2.Nf3, which meets 1.Nf3. */
const lines = ['e4 e5 Nf3 Nc6 Bb5', 'e4 e5 Bc4~', 'e4 e5 Qh5?', 'e4 c5 Nf3 d6 d4'];
const course = smallCourse([lines], ['Qh5', 'Bb5']);

/** The tasks of all positions after the moves of a line before its own moves. */
const tasks = (more: Partial<Task> = {}): Task[] =>
  course.items.map(({ position }) => ({ position, ...more }));
const only = (...advice: string[]): Task[] =>
  course.items
    .filter((item) => advice.includes(item.advice[0] ?? ''))
    .map(({ position }) => ({ position }));

const line = (session: Session) => session.line.map(({ move }) => move.san).join(' ');
const start = (list: readonly Task[]) => begin(course, list, all);
const play = (session: Session, ...sans: string[]) =>
  sans.reduce((before, san) => tryMove(before, san, false), session);

describe('the other side', () => {
  test('plays the replies that lead to what is asked, and known moves are played on the way', () => {
    const session = start(only('d4'));
    expect(line(session)).toBe('e4 c5 Nf3 d6');
    expect(session.stage.kind).toBe('ask');
  });

  test('answers at once where there is nothing to read, and begins another line where none is left', () => {
    let session = play(start(tasks()), 'e4');
    expect(line(session)).toBe('e4 e5');
    expect(session.feedback).toEqual({ kind: 'right', san: 'e4' });
    session = play(session, 'Nf3');
    expect(line(session)).toBe('e4 e5 Nf3 Nc6');
    session = play(session, 'Bb5');
    expect(session.stage).toEqual({ kind: 'read', next: 'line' });
    session = goOn(session);
    expect(line(session)).toBe('e4 c5');
    session = play(session, 'Nf3', 'd4');
    expect(session.stage).toEqual({ kind: 'read', next: 'end' });
    session = goOn(session);
    expect(session.stage.kind).toBe('end');
    expect(session.outcomes.map(({ how }) => how)).toEqual(Array(5).fill('known'));
  });

  test('waits where the author has something to say', () => {
    const noted = smallCourse([['e4 e5 Nf3']], ['e4']);
    const all = noted.items.map(({ position }) => ({ position }));
    const session = tryMove(begin(noted, all, new Set([0])), 'e4', false);
    expect(session.stage).toEqual({ kind: 'read', next: 'on' });
    expect(goOn(session).stage.kind).toBe('ask');
  });
});

describe('a tried move', () => {
  test('that the course mentions costs nothing', () => {
    let session = play(start(tasks()), 'e4', 'Bc4');
    expect(session.feedback).toEqual({ kind: 'option', san: 'Bc4' });
    expect(session.outcome).toBeUndefined();
    session = play(session, 'Nf3');
    expect(session.outcome?.how).toBe('known');
  });

  test.each([
    ['Qh5', 'bad'],
    ['d4', 'other'],
  ])('that is wrong counts at once and comes back: %s', (san, kind) => {
    let session = play(start(only('e4', 'Nf3', 'Bb5')), 'e4', san);
    expect(session.feedback?.kind).toBe(kind);
    expect(session.outcome?.how).toBe('wrong');
    const { position } = session.outcome ?? {};
    session = play(session, 'Nf3');
    expect(session.outcome).toBeUndefined();
    expect(session.tasks.map((task) => task.position)).toContain(position);
    // At the end of this line it is asked once more, and does not count a second time.
    while (session.stage.kind !== 'end') {
      const here = session.stage.kind === 'ask' ? session.stage.task.position : undefined;
      const [advice = ''] = (here !== undefined && course.itemAt.get(here)?.advice) || [];
      session = session.stage.kind === 'read' ? goOn(session) : play(session, advice);
    }
    expect(session.outcomes.filter((outcome) => outcome.position === position)).toHaveLength(1);
    expect(session.tasks).toEqual([]);
  });

  test('found slowly or with a hint is told from one found at once', () => {
    expect(tryMove(start(only('e4')), 'e4', true).outcome?.how).toBe('slow');
    expect(tryMove(giveHint(start(only('e4'))), 'e4', false).outcome?.how).toBe('slow');
  });

  test('that has to be shown is played, read, and comes back', () => {
    const session = showMove(start(only('e4', 'Nf3')));
    expect(session.outcome?.how).toBe('shown');
    expect(line(session)).toBe('e4');
    expect(session.stage.kind).toBe('read');
    expect(session.tasks).toHaveLength(3);
    expect(showMove(session)).toBe(session);
  });
});

describe('a new move', () => {
  test('is told, played by the reader, and asked later in the session', () => {
    let session = start(tasks({ show: 'new' }).slice(0, 3));
    expect(session.stage.kind).toBe('show');
    expect(play(session, 'd4').feedback).toEqual({ kind: 'not-shown', san: 'e4' });
    session = play(session, 'e4');
    expect(session.outcome).toBeUndefined();
    expect(session.tasks).toHaveLength(3);
    session = play(session, 'Nf3', 'Bb5');
    session = goOn(session);
    expect(session.stage).toMatchObject({ kind: 'ask' });
    expect(line(session)).toBe('');
    expect(play(session, 'e4').outcome?.how).toBe('known');
  });

  test('alone is asked right after it was shown', () => {
    const session = goOn(play(start(only('e4').map((task) => ({ ...task, show: 'new' }))), 'e4'));
    expect(session.stage.kind).toBe('ask');
  });
});

test('transpositions are one item', () => {
  const twice = smallCourse([['e4 e5 Nf3 Nc6 Bb5'], ['Nf3~ e5 e4 Nc6 Bb5']]);
  const merged = twice.items.filter(({ advice }) => advice[0] === 'Bb5');
  expect(merged).toHaveLength(1);
  expect(merged[0]?.chapters).toEqual([0, 1]);
});

test('a line begins where those of the chosen chapters do', () => {
  const two = smallCourse([['e4 e5 Nf3'], ['e4 e5 Nf3']]);
  const late = two.table.positions[2]?.key ?? '';
  const starts = [
    { chapter: 0, position: 0, number: 1 },
    { chapter: 1, position: 2, number: 2 },
  ];
  const placed = { ...two, notes: { ...two.notes, starts } };
  const [, second] = two.items;
  const session = begin(placed, [{ position: second?.position ?? 0 }], new Set([1]));
  expect(second?.key).toBe(late);
  expect(session.start.number).toBe(2);
  expect(session.line).toEqual([]);
});

test('a position that no reply leads to is reached through mentioned moves and warnings', () => {
  const hidden = smallCourse([['e4 e5 Nf3', 'e4 e5 Qh5? Nc6 Bc4']]);
  const item = hidden.items.find(({ advice }) => advice[0] === 'Bc4');
  const session = begin(hidden, [{ position: item?.position ?? -1 }], new Set([0]));
  expect(line(session)).toBe('e4 e5 Qh5 Nc6');
});

test('what another tab has answered is left out, but not under the hands of the reader', () => {
  const session = start(tasks());
  const positions = new Set(session.tasks.map(({ position }) => position));
  const rest = leaveOut(session, positions);
  expect(rest.tasks).toHaveLength(1);
  expect(rest.stage).toBe(session.stage);
});

test('what stands aside is neither asked nor passed through, unless it leads to what is asked', () => {
  const whole = smallCourse([['e4 e5 Nf3 Nc6 Bb5', 'e4~ e5 Bc4 Nc6 Nf3']]);
  const at = (advice: string) =>
    whole.items.find((item) => item.advice[0] === advice)?.position ?? -1;
  const { unasked, aside } = { unasked: [at('Bc4')], aside: [at('Bb5')] };
  const course = practiceCourse(whole.table, { ...whole.notes, unasked, aside });
  expect(course.itemAt.has(at('Bc4'))).toBe(false);
  const from = course.table.positions[at('e4')]?.moves[0]?.to ?? -1;
  const beyond = course.table.positions[at('Bb5')]?.moves[0]?.to ?? -1;
  expect(pathOn(course, from, new Set([beyond]))).toBeUndefined();
  expect(pathTo(course, beyond, new Set([0])).steps.map(({ move }) => move.san)).toEqual([
    'e4',
    'e5',
    'Nf3',
    'Nc6',
    'Bb5',
  ]);
});

test('a line does not go on through a move that the course only mentions', () => {
  const course = smallCourse([['e4 e5 Nf3', 'e4 c5 Bc4~ Nc6 Nf3']]);
  const [first, ...others] = course.items;
  const later = others.find(({ position }) => position !== first?.position);
  expect(first && later && others.length).toBe(2);
  const mentioned = course.items.find(({ key }) => key.startsWith('r1bqkbnr'));
  expect(
    pathOn(course, first?.position ?? -1, new Set([mentioned?.position ?? -1])),
  ).toBeUndefined();
});
