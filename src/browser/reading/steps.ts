import { beside, endOfLine, type Spot, startOfBlock } from '../spots.ts';
import type { Navigation } from './keys.ts';

/** Where steps along the moves lead. */
export interface Steps {
  target(step: Navigation, from: Spot): Spot | undefined;
  /** Remembers a step that was taken. */
  took(from: Spot, to: Spot): void;
  forget(): void;
}

/** A step on takes the way again that was stepped back from; else the line goes on. */
export function createSteps(waysOn: (spot: Spot) => readonly Spot[]): Steps {
  const cameFrom = new Map<Spot, Spot>();
  return {
    target(step, from) {
      switch (step) {
        case 'back':
          return from.parent;
        case 'on':
          return cameFrom.get(from) ?? waysOn(from)[0];
        case 'first':
          return startOfBlock(from);
        case 'last':
          return endOfLine(from);
        case 'variation-before':
          return beside(from, -1);
        case 'variation-after':
          return beside(from, 1);
      }
    },
    took(from, to) {
      if (from.parent === to) cameFrom.set(to, from);
    },
    forget: () => cameFrom.clear(),
  };
}
