import type { Place } from '../../diagnostics/index.ts';
import type { Situation } from './forms/index.ts';
import type { NamedSituation } from './situations.ts';
import type { PlainText } from './text.ts';

export interface Passage {
  readonly text: PlainText;
  readonly kind: 'front' | 'comment' | 'prose' | 'heading' | 'row' | 'caption' | 'question';
  readonly shown?: NamedSituation;
  /** Whether it stands before what it speaks of, or among many positions, so that all of them count. */
  readonly loose: boolean;
  /** Where else it may look. */
  readonly near: () => Iterable<Situation>;
  /** The place of the whole, for a text whose own places are not known. */
  readonly place?: Place;
  /** Whether a directive may be put behind its sentences. */
  readonly takesClaims: boolean;
}
