import { type Profiler, Session } from 'node:inspector';
import { setFlagsFromString } from 'node:v8';

/**
 * Counts work: V8 counts how often each block of code runs, in our code and in the libraries, so the
 * sum grows as the time does, and is the same on every machine. What a built-in function does inside,
 * such as a regular expression or `indexOf`, is one step.
 */
export interface StepCounter {
  readonly count: (
    run: () => void | Promise<void>,
  ) => Promise<{ readonly steps: number; readonly most: string }>;
}

/**
 * To be made before the code that is counted is loaded: blocks get their counters when they are compiled.
 * What ran since the last count is counted too: to ask twice would take most of the time.
 */
export function createStepCounter(): StepCounter {
  // Optimised code does not count each call, and when V8 makes it is a matter of time.
  for (const flag of ['--no-opt', '--no-maglev']) setFlagsFromString(flag);
  const session = new Session();
  session.connect();
  const send = session.post.bind(session) as (
    method: string,
    parameters: object,
    answer: (error: Error | null, result: unknown) => void,
  ) => void;
  // Such commands are answered at once.
  const post = (method: string, parameters: object = {}): unknown => {
    let answer: unknown;
    send(method, parameters, (error, result) => {
      if (error) throw error;
      answer = result;
    });
    return answer;
  };
  post('Profiler.enable');
  post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  const take = () =>
    (post('Profiler.takePreciseCoverage') as Profiler.TakePreciseCoverageReturnType).result;
  return {
    async count(run) {
      await run();
      let steps = 0;
      let most = { count: 0, name: '' };
      for (const { url, functions } of take()) {
        if (url.startsWith('node:')) continue;
        for (const { functionName, ranges } of functions) {
          for (const { count } of ranges) {
            steps += count;
            if (count > most.count) most = { count, name: `${functionName} of ${url}` };
          }
        }
      }
      return {
        steps,
        most: `${most.count} times in ${most.name.replace(/of .*\/(?=[^/]+\/[^/]+$)/, 'of ')}`,
      };
    },
  };
}
