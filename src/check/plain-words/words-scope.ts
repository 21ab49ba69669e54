import type { ChapterScope } from '../course-rule.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A chapter whose words are checked, the course around it, and the words of its language. */
export interface WordsScope extends ChapterScope {
  readonly vocabulary: Vocabulary;
}
