/** The thread that runs a course's own code: it answers one call after the other, and may ask in between. */
import { receiveMessageOnPort, workerData } from 'node:worker_threads';
import { ArgumentReader, type ClaimContext, UnreadableClaim } from '../check/for-own-rules.ts';
import type { PlayedMove, Position } from '../chess/index.ts';
import type { DefinedClaim, DefinedRule } from './api.ts';
import { importFrom } from './import-from.ts';
import type {
  Call,
  CodeFault,
  DefinedInFile,
  Loaded,
  Question,
  ReadClaim,
  Reply,
  ThreadData,
} from './protocol.ts';
import type { RuleCourse } from './types.ts';

const { port, signals, api } = workerData as ThreadData;
const rules = new Map<string, DefinedRule>();
const claims = new Map<string, DefinedClaim>();
/** Claims that were read, by their words. */
const judges = new Map<string, ReturnType<DefinedClaim['read']>>();

// What code prints must not come among findings that are printed as JSON.
process.stdout.write = process.stderr.write.bind(process.stderr);

port.on('message', (call: Call) => {
  void answer(call).then(
    (value) => say({ said: 'value', json: JSON.stringify(value) ?? 'null' }),
    (error: unknown) => say({ said: 'fault', fault: faultOf(error) }),
  );
});

function say(reply: Reply): void {
  port.postMessage(reply);
  Atomics.add(signals, 0, 1);
  Atomics.notify(signals, 0);
}

/** Asks in the middle of a call, and waits: whoever called waits as well. */
function ask(asks: Question['asks'], about: string): unknown {
  say({ said: 'question', question: { asks, about } });
  for (;;) {
    const seen = Atomics.load(signals, 1);
    const told = receiveMessageOnPort(port);
    if (told) return told.message;
    Atomics.wait(signals, 1, seen);
  }
}

async function answer(call: Call): Promise<unknown> {
  switch (call.does) {
    case 'load':
      return load(call.file, await importFrom(call, api));
    case 'rule':
      return runRule(call);
    case 'read':
      return readClaim(call);
    case 'judge':
      return judgeOf(call)?.(contextOf(call));
  }
}

function load(file: string, module: { readonly default?: unknown }): Loaded {
  const given = module.default;
  if (given === undefined) {
    throw new Error(
      `${file} has no default export, such as \`export default defineCourseRule({ … })\``,
    );
  }
  const all: unknown[] = Array.isArray(given) ? given : [given];
  return { defined: all.map(remember) };
}

function remember(given: unknown): DefinedInFile {
  const { defines } = (given ?? {}) as { readonly defines?: unknown };
  if (defines === 'rule') {
    const rule = given as DefinedRule;
    rules.set(rule.id, rule);
    const { id, severity, finds, inChapter, inCourse } = rule;
    return {
      defines,
      id,
      severity,
      finds,
      inChapter: typeof inChapter === 'function',
      inCourse: typeof inCourse === 'function',
    };
  }
  if (defines === 'claim') {
    const claim = given as DefinedClaim;
    claims.set(claim.name, claim);
    const { name, usage, definition, source, examples } = claim;
    return { defines, name, usage, definition, source, examples };
  }
  return {
    defines: 'nothing',
    what: given === null ? 'null' : `a value of the type ${typeof given}`,
  };
}

async function runRule({ id, side, language, about }: Extract<Call, { does: 'rule' }>) {
  const rule = rules.get(id);
  const course: RuleCourse = {
    side,
    language,
    advice: (key) => ask('advice', key) as string | undefined,
    covered: (key) => ask('covered', key) as readonly string[],
    named: (name) => ask('named', name) as Position | undefined,
  };
  const found: unknown = await ('chapter' in about
    ? rule?.inChapter?.({ ...about, course })
    : rule?.inCourse?.({ ...about, course }));
  const all: unknown[] = [];
  for await (const one of listOf(found)) {
    all.push(one);
    if (all.length > mostFindings) break;
  }
  return all;
}

/** A rule that gave one thing in place of a list has given that: whoever reads it says what it is. */
function listOf(found: unknown): Iterable<unknown> | AsyncIterable<unknown> {
  const isList =
    typeof found === 'object' &&
    found !== null &&
    (Symbol.iterator in found || Symbol.asyncIterator in found);
  if (isList) return found as Iterable<unknown> | AsyncIterable<unknown>;
  return found === undefined || found === null ? [] : [found];
}

/** One more than is taken, so that whoever counts sees that there are too many. */
const mostFindings = 1000;

function readClaim({ claim, words, end }: Extract<Call, { does: 'read' }>): ReadClaim {
  const reader = new ArgumentReader(words, end);
  try {
    claims.get(claim)?.read(reader);
    return { labels: reader.labels };
  } catch (error) {
    if (error instanceof UnreadableClaim) return { fault: error.fault };
    throw error;
  }
}

function judgeOf({ claim, words, end }: Extract<Call, { does: 'judge' }>) {
  const name = `${claim} ${words.map(({ text }) => text).join(' ')}`;
  const judge = judges.get(name) ?? claims.get(claim)?.read(new ArgumentReader(words, end));
  if (judge) judges.set(name, judge);
  return judge;
}

function contextOf({ side, position, before }: Extract<Call, { does: 'judge' }>): ClaimContext {
  return {
    position,
    side,
    ...(before && { before }),
    get covered() {
      return ask('covered', position.key) as readonly string[];
    },
    coveredFrom: ({ key }) => ask('covered', key) as readonly string[],
    castlings: () => ask('castlings', '') as readonly PlayedMove[],
    labelled: (name) => ask('labelled', name) as Position | undefined,
  };
}

function faultOf(error: unknown): CodeFault {
  if (!(error instanceof Error)) return { message: `a thrown ${typeof error}`, stack: '' };
  return { message: `${error.name}: ${error.message}`, stack: error.stack ?? '' };
}
