import { createHash } from 'node:crypto';
import {
  type ClaimContext,
  type ClaimKind,
  claimKinds,
  isClaimFault,
  judgeClaim,
  type OwnChecks,
  type OwnRule,
  rules as ourRules,
  parseClaim,
  UnreadableClaim,
  type Verdict,
} from '../check/index.ts';
import { isFenFault, parseFen } from '../chess/index.ts';
import { type Finding, type Place, topOf } from '../diagnostics/index.ts';
import type { SourceFile } from '../read/index.ts';
import { chapterForRules, chapterInShort } from './chapter-for-rules.ts';
import { faultPlace } from './fault-place.ts';
import { CodeHost, type Outcome } from './host.ts';
import type { Call, Loaded, Question } from './protocol.ts';
import {
  type Definition,
  readDefinition,
  readFindings,
  readReadClaim,
  readVerdict,
} from './read-answers.ts';
import type { FoundByRule } from './types.ts';

/** How long code may take, in milliseconds. */
export interface CodeLimits {
  /** To be imported, with what it does at once. */
  readonly load: number;
  /** To look at a chapter, or to judge a claim. */
  readonly call: number;
}

export interface OwnChecksOptions {
  readonly limits?: CodeLimits;
  /** Is told which files are run, before they are. */
  readonly onRun?: (files: readonly string[]) => void;
}

const usual: CodeLimits = { load: 10_000, call: 10_000 };

type Scope = Parameters<OwnChecks['inChapter']>[0];
type Ask = Scope['course']['ask'];

/** A rule or a claim, and the file that defines it. */
type InFile = Definition & { readonly file: string };

/**
 * Makes the rules and claims of a course's own: their code runs in a thread, which begins with the first of them that is
 * asked. The last that were made stay, so a course that stays current begins no other while its code is the same.
 */
export function createOwnChecks({ limits = usual, onRun }: OwnChecksOptions = {}) {
  let last:
    | { readonly print: string; readonly own: OwnChecks; readonly stop: () => void }
    | undefined;
  const make = (files: readonly SourceFile[], named: readonly string[]): OwnChecks => {
    const print = printOf(files, named);
    if (last?.print === print) return last.own;
    last?.stop();
    const code = new OwnCode(files, named, limits);
    onRun?.(code.paths);
    code.loadAll();
    last = { print, own: code.checks(print), stop: () => code.stop() };
    return last.own;
  };
  return Object.assign(make, { stop: () => last?.stop() });
}

function printOf(files: readonly SourceFile[], named: readonly string[]): string {
  const all = files.map(({ path, text }) => [path, text]);
  return createHash('sha256')
    .update(JSON.stringify([named, all]))
    .digest('base64url')
    .slice(0, 22);
}

class OwnCode {
  private readonly files: readonly SourceFile[];
  readonly paths: readonly string[];
  private readonly limits: CodeLimits;
  private readonly host: CodeHost;
  private readonly defined: InFile[] = [];
  /** Faults of files, found when they were loaded. */
  private readonly faults: Finding[] = [];
  /** What gave no answer in time, and what is said of it: it is not asked again. */
  private readonly stopped = new Map<string, Finding | undefined>();
  private late = 0;

  constructor(files: readonly SourceFile[], named: readonly string[], limits: CodeLimits) {
    this.files = files;
    this.paths = named
      .map((name) => `rules/${name}`)
      .filter((file) => files.some(({ path }) => path === file));
    this.limits = limits;
    this.host = new CodeHost((host) => this.reload(host));
  }

  loadAll(): void {
    for (const file of this.paths) this.load(file);
  }

  stop(): void {
    this.host.stop();
  }

  checks(print: string): OwnChecks {
    const rules = this.defined.flatMap((one) => (one.defines === 'rule' ? [one] : []));
    const claims = this.defined.flatMap((one) =>
      one.defines === 'claim' ? [this.claim(one)] : [],
    );
    this.tryExamples(claims);
    const isOn = (off: ReadonlySet<string>) => (rule: OwnRule) => !off.has(rule.id);
    return {
      rules: rules.map(({ id, severity, finds }) => ({ id, severity, finds })),
      claims,
      leftOut: false,
      print,
      late: () => this.late,
      inChapter: ({ chapter, course }, off) => {
        const asked = rules.filter(({ inChapter }) => inChapter).filter(isOn(off));
        if (asked.length === 0) return [];
        const about = { chapter: chapterForRules(chapter) };
        return asked.flatMap((rule) => this.run(rule, { course, about, top: topOf(chapter.file) }));
      },
      inCourse: (summaries, { course }, off) => {
        const asked = rules.filter(({ inCourse }) => inCourse).filter(isOn(off));
        const about = { chapters: asked.length === 0 ? [] : summaries.map(chapterInShort) };
        const top = topOf('course.yaml');
        const found = asked.flatMap((rule) => this.run(rule, { course, about, top }));
        const said = [...this.faults, ...this.stopped.values()].filter(
          (each) => each !== undefined,
        );
        return [...said.map((finding) => ({ rule: 'own-rule', finding })), ...found];
      },
    };
  }

  private load(file: string): void {
    const outcome = this.host.call({ does: 'load', files: this.files, file }, this.limits.load);
    if (!('value' in outcome)) {
      this.stopped.set(file, undefined);
      this.faults.push(this.faultOf(outcome, file, file));
      return;
    }
    for (const given of (outcome.value as Loaded).defined) {
      const read = readDefinition(given);
      const wrong = 'wrong' in read ? read.wrong : this.whyTaken(read);
      if (wrong === undefined && !('wrong' in read)) this.defined.push({ ...read, file });
      else
        this.faults.push({
          place: topOf(file),
          message: `Something that ${file} defines is left out: ${wrong}.`,
          ...('wrong' in read ? {} : { hint: 'Give it a name of its own.' }),
        });
    }
  }

  private whyTaken(one: Definition): string | undefined {
    const isRule = one.defines === 'rule';
    const name = isRule ? one.id : one.name;
    const ours = isRule ? ourRules.map(({ id }) => id) : claimKinds.map((kind) => kind.name);
    if (ours.includes(name)) return `there is a ${one.defines} \`${name}\` already`;
    const other = this.defined.find(
      (each) => each.defines === one.defines && nameOf(each) === name,
    );
    return other && `${other.file} defines \`${name}\` already`;
  }

  /** A thread is new: it gets what the one before it had. */
  private reload(host: CodeHost): void {
    for (const file of this.paths) {
      if (this.stopped.has(file)) continue;
      host.call({ does: 'load', files: this.files, file }, this.limits.load);
    }
  }

  private call(name: string, call: Call, reply: (question: Question) => unknown): Outcome {
    const outcome = this.stopped.has(name)
      ? ({ late: true } as const)
      : this.host.call(call, this.limits.call, reply);
    if ('late' in outcome) {
      this.late++;
      if (!this.stopped.has(name)) this.stopped.set(name, undefined);
    }
    return outcome;
  }

  private run(
    { id, file }: Extract<InFile, { defines: 'rule' }>,
    {
      course,
      about,
      top,
    }: {
      readonly course: Scope['course'];
      readonly about: Extract<Call, { does: 'rule' }>['about'];
      readonly top: Place;
    },
  ) {
    const { side, language } = course;
    const call = { does: 'rule', id, side, language, about } as const;
    const outcome = this.call(id, call, answerFrom(course.ask));
    const fault = (finding: Finding) => ({ rule: 'own-rule', finding });
    if ('late' in outcome) {
      // It is not asked of the other chapters, and what is said of it belongs to none.
      const said = this.stopped.get(id) ?? this.faultOf(outcome, `\`${id}\``, file, top);
      this.stopped.set(id, said);
      return [];
    }
    if ('fault' in outcome) return [fault(this.faultOf(outcome, `\`${id}\``, file, top))];
    const isFile = (name: string) =>
      'chapter' in about
        ? name === about.chapter.file
        : name === 'course.yaml' || about.chapters.some((each) => each.file === name);
    const { found, wrong } = readFindings(outcome.value, isFile);
    return [
      ...found.map((one) => ({ rule: id, finding: findingOf(one, top) })),
      ...(wrong === undefined
        ? []
        : [
            fault({
              place: topOf(file),
              message: `\`${id}\` does not do what a rule does: ${wrong}.`,
            }),
          ]),
    ];
  }

  private claim({ file, name, ...about }: Extract<InFile, { defines: 'claim' }>): ClaimKind {
    const { usage, definition, source, examples } = about;
    const undecided = (outcome: Outcome): Verdict => ({
      holds: 'undecided',
      because: this.becauseOf(outcome, file),
    });
    return {
      name,
      usage,
      definition,
      source,
      examples: examples as ClaimKind['examples'],
      read: (reader) => {
        const { words, end } = reader.handOver();
        const call = { does: 'read', claim: name, words, end } as const;
        const outcome = this.call(name, call, () => undefined);
        const read = 'value' in outcome ? readReadClaim(outcome.value) : undefined;
        if (read === undefined) return () => undecided(outcome);
        if ('fault' in read) throw new UnreadableClaim(read.fault);
        reader.labels.push(...read.labels);
        return (context) => {
          const { side, position, before } = context;
          const around = { side, position, ...(before && { before }) };
          const judge = { does: 'judge', claim: name, words, end, ...around } as const;
          const judged = this.call(name, judge, answerOf(context));
          const verdict = 'value' in judged ? readVerdict(judged.value) : undefined;
          return verdict ?? undecided(judged);
        };
      },
    };
  }

  private becauseOf(outcome: Outcome, file: string): string {
    if ('late' in outcome) return `${file} gave no answer in time`;
    if ('fault' in outcome) {
      const { start, file: where } = faultPlace(outcome.fault, file, this.files);
      return `${where} failed in line ${start.line}: ${outcome.fault.message}`;
    }
    return `${file} gave no verdict, which has \`holds\` and \`because\``;
  }

  private faultOf(outcome: Outcome, what: string, file: string, top?: Place): Finding {
    const related = top && { related: [{ place: top, message: 'It was looking at this file.' }] };
    if ('fault' in outcome) {
      return {
        place: faultPlace(outcome.fault, file, this.files),
        message: `${what} failed: ${outcome.fault.message}.`.replace(/([.!?])\.$/, '$1'),
        ...related,
      };
    }
    const seconds = (top ? this.limits.call : this.limits.load) / 1000;
    return {
      place: topOf(file),
      message: `${what} gave no answer within ${seconds} seconds and was stopped.`,
      hint: 'Look for a loop without an end in it.',
      ...related,
    };
  }

  /** A claim whose own examples are judged otherwise than they say proves nothing. */
  private tryExamples(claims: readonly ClaimKind[]): void {
    for (const { name, examples } of claims) {
      const file = this.defined.find((one) => one.defines === 'claim' && one.name === name)?.file;
      for (const example of examples) {
        const wrong = wrongIn(example, claims);
        if (wrong === undefined) continue;
        this.faults.push({
          place: topOf(file ?? ''),
          message: `The example \`${example.claim}\` of the claim \`${name}\` is not as it says: ${wrong}.`,
        });
      }
    }
  }
}

function nameOf(one: Definition): string {
  return one.defines === 'rule' ? one.id : one.name;
}

function findingOf({ place = undefined, ...found }: FoundByRule, top: Place): Finding {
  return { ...found, place: place ?? top };
}

/** Answers what a rule asks of the course. */
function answerFrom(ask: Ask): (question: Question) => unknown {
  return ({ asks, about }) => {
    switch (asks) {
      case 'advice':
        return ask('advice', about)?.san;
      case 'covered':
        return ask('covered', about);
      case 'named':
        return ask('name', about) ?? undefined;
      default:
        return undefined;
    }
  };
}

/** Answers what a claim asks of its context. */
function answerOf(context: ClaimContext): (question: Question) => unknown {
  return ({ asks, about }) => {
    switch (asks) {
      case 'covered':
        return about === context.position.key
          ? context.covered
          : context.coveredFrom?.({ key: about, fen: `${about} 0 1` });
      case 'castlings':
        return context.castlings();
      case 'labelled':
        return context.labelled(about);
      default:
        return undefined;
    }
  };
}

/** Why an example of a claim is not as it says. */
function wrongIn(
  { fen, claim, holds, side = 'white' }: ClaimKind['examples'][number],
  own: readonly ClaimKind[],
): string | undefined {
  const position = parseFen(fen);
  if (isFenFault(position)) return `its FEN cannot be read: ${position.reason}`;
  const read = parseClaim(claim, own);
  if (isClaimFault(read)) return read.reason;
  const [refuted] = judgeClaim(read, {
    position,
    side,
    covered: [],
    castlings: () => [],
    labelled: () => undefined,
  });
  if (refuted === undefined) return holds === true ? undefined : 'it holds';
  if (holds === 'undecided') return refuted.undecided ? undefined : refuted.because;
  return holds === true || refuted.undecided ? refuted.because : undefined;
}
