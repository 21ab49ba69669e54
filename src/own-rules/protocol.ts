/** What the check and the thread that runs a course's own code say to each other. */
import type { ClaimFault, Word } from '../check/index.ts';
import type { Position } from '../chess/index.ts';
import type { Severity } from '../diagnostics/index.ts';
import type { Side } from '../model/index.ts';
import type { SourceFile } from '../read/index.ts';
import type { ChapterInShort, RuleChapter } from './types.ts';

export type Call =
  | {
      readonly does: 'load';
      readonly files: readonly SourceFile[];
      /** The path of the one that is imported now. */
      readonly file: string;
    }
  | {
      readonly does: 'rule';
      readonly id: string;
      readonly side: Side;
      readonly language: string;
      readonly about:
        | { readonly chapter: RuleChapter }
        | { readonly chapters: readonly ChapterInShort[] };
    }
  | {
      readonly does: 'read';
      readonly claim: string;
      readonly words: readonly Word[];
      readonly end: number;
    }
  | {
      readonly does: 'judge';
      readonly claim: string;
      readonly words: readonly Word[];
      readonly end: number;
      readonly side: Side;
      readonly position: Position;
      readonly before?: Position;
    };

/** What a file defines, as far as it can be told without its functions; nothing of it has been tested. */
export interface Loaded {
  readonly defined: readonly DefinedInFile[];
}

export type DefinedInFile =
  | {
      readonly defines: 'rule';
      readonly id: string;
      readonly severity: Severity;
      readonly finds: string;
      readonly inChapter: boolean;
      readonly inCourse: boolean;
    }
  | {
      readonly defines: 'claim';
      readonly name: string;
      readonly usage: readonly string[];
      readonly definition: string;
      readonly source: string;
      readonly examples: readonly unknown[];
    }
  | { readonly defines: 'nothing'; readonly what: string };

/** What `read` gives. */
export type ReadClaim = { readonly labels: readonly Word[] } | { readonly fault: ClaimFault };

/** What code asks in the middle of a call. */
export interface Question {
  readonly asks: 'advice' | 'covered' | 'named' | 'castlings' | 'labelled';
  readonly about: string;
}

/** Why code gave no answer. */
export interface CodeFault {
  /** As its error has it: `TypeError: x is not a function`. */
  readonly message: string;
  readonly stack: string;
}

/** What comes back: the value as JSON, since code may give anything. */
export type Reply =
  | { readonly said: 'question'; readonly question: Question }
  | { readonly said: 'value'; readonly json: string }
  | { readonly said: 'fault'; readonly fault: CodeFault };

/** What the thread is started with. `signals[0]` counts what it has said, `signals[1]` what it was told. */
export interface ThreadData {
  readonly port: import('node:worker_threads').MessagePort;
  readonly signals: Int32Array;
  /** Where `linewright/rules` lies. */
  readonly api: string;
}
