import type { Node } from 'mdast';

/**
 * Stands for text that is not read, since reading it would take a time that grows faster than the
 * text: the parser of Markdown looks back, or ahead, from each of some signs. `readTextNodes` reports it.
 */
export interface ExcessNode extends Node {
  type: 'excess';
  message: string;
  hint: string;
}

declare module 'mdast' {
  interface RootContentMap {
    excess: ExcessNode;
  }
  interface PhrasingContentMap {
    excess: ExcessNode;
  }
}
