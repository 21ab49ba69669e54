import { lineStarts } from '../../diagnostics/index.ts';
import {
  type EngineFact,
  type EngineFacts,
  makeEngineFacts,
  parseFactsFile,
} from '../../facts/index.ts';
import type { CourseProblem, SourceFile } from '../../read/index.ts';

/** Reads the files of facts of a course; lines that say nothing are problems, and the others count. */
export function readFacts(files: readonly SourceFile[] = []): {
  readonly facts: EngineFacts;
  readonly problems: readonly CourseProblem[];
} {
  const facts: EngineFact[] = [];
  const problems: CourseProblem[] = [];
  for (const file of files) {
    const read = parseFactsFile(file.text);
    for (const fact of read.facts) facts.push(fact);
    if (read.faults.length === 0) continue;
    const starts = lineStarts(file.text);
    for (const { line, reason } of read.faults) {
      const offset = starts[line - 1] ?? 0;
      const [text = ''] = file.text.slice(offset).split(/[\r\n]/, 1);
      problems.push({
        rule: 'facts-unreadable',
        place: {
          file: file.path,
          start: { line, column: 1, offset },
          end: { line, column: text.length + 1, offset: offset + text.length },
        },
        message: `This line of the engine’s results is not read: ${reason}.`,
        hint: 'Take the line out, and let `linewright engine` look at the position again.',
      });
    }
  }
  return { facts: makeEngineFacts(facts), problems };
}
