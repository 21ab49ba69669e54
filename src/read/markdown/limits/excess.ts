import type { Node } from 'mdast';

/**
 * Stands for text that is left unread because parsing it would take more than linear time: the Markdown parser looks
 * back or ahead from some characters. `readTextNodes` reports it.
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
