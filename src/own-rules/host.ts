import {
  MessageChannel,
  type MessagePort,
  receiveMessageOnPort,
  Worker,
} from 'node:worker_threads';
import type { Call, CodeFault, Question, Reply, ThreadData } from './protocol.ts';

/** This module is TypeScript in the tests and JavaScript when built; so are the files beside it. */
const extension = import.meta.url.endsWith('.ts') ? 'ts' : 'js';
const threadFile = new URL(`./thread.${extension}`, import.meta.url);
const api = new URL(`./api.${extension}`, import.meta.url).href;

/** Code that holds more than this, in MB, ends. */
const mostMemory = 512;

/** What became of a call. */
export type Outcome =
  | { readonly value: unknown }
  | { readonly fault: CodeFault }
  /** It did not answer in time, and was stopped. */
  | { readonly late: true };

interface Thread {
  readonly worker: Worker;
  readonly port: MessagePort;
  readonly signals: Int32Array;
}

/**
 * Runs a course's own code in a thread of its own and waits for it, so that the check stays what it is: a function.
 * Code that gives no answer in time is stopped with its thread, and the next call begins another.
 */
export class CodeHost {
  private thread: Thread | undefined;
  /** What a new thread is told before anything else. */
  private readonly begin: (host: CodeHost) => void;

  constructor(begin: (host: CodeHost) => void) {
    this.begin = begin;
  }

  /**
   * @param limit milliseconds that it may take.
   * @param reply answers what the code asks meanwhile, with plain data.
   */
  call(
    call: Call,
    limit: number,
    reply: (question: Question) => unknown = () => undefined,
  ): Outcome {
    const isNew = this.thread === undefined;
    this.thread ??= start();
    if (isNew && call.does !== 'load') this.begin(this);
    const { thread } = this;
    if (thread === undefined) return { late: true };
    tell(thread, call);
    const end = Date.now() + limit;
    for (;;) {
      const said = waitFor(thread, end);
      if (said === undefined) {
        this.stop();
        return { late: true };
      }
      if (said.said === 'value') return { value: JSON.parse(said.json) };
      if (said.said === 'fault') return { fault: said.fault };
      tell(thread, reply(said.question));
    }
  }

  stop(): void {
    void this.thread?.worker.terminate();
    this.thread = undefined;
  }
}

function start(): Thread {
  const { port1, port2 } = new MessageChannel();
  const signals = new Int32Array(new SharedArrayBuffer(8));
  const data: ThreadData = { port: port2, signals, api };
  const worker = new Worker(threadFile, {
    workerData: data,
    transferList: [port2],
    resourceLimits: { maxOldGenerationSizeMb: mostMemory },
  });
  // What it died of is known by its silence: while it is waited for, no event comes.
  worker.on('error', () => {});
  worker.unref();
  port1.unref();
  return { worker, port: port1, signals };
}

function tell({ port, signals }: Thread, message: unknown): void {
  port.postMessage(message);
  Atomics.add(signals, 1, 1);
  Atomics.notify(signals, 1);
}

function waitFor({ port, signals }: Thread, end: number): Reply | undefined {
  for (;;) {
    const seen = Atomics.load(signals, 0);
    const said = receiveMessageOnPort(port);
    if (said) return said.message as Reply;
    const left = end - Date.now();
    if (left <= 0) return undefined;
    Atomics.wait(signals, 0, seen, left);
  }
}
