/** Limits where the model compares each of some things with each of others. */
export interface ModelLimits {
  readonly places: number;
  readonly matched: number;
  readonly chain: number;
}

export const modelLimits: ModelLimits = {
  /**
   * How many nodes may be compared with the moves that a chapter's texts mention. Nearly every mention is found at
   * the first node, in the block above it; a thousand mentions that none of a thousand blocks has make a million
   * comparisons. The limit is per chapter, so that reusing one chapter does not change another's budget.
   */
  places: 5_000_000,
  /**
   * How many positions all patterns of a course are compared with: a hundred patterns in a course of fifty thousand
   * positions.
   */
  matched: 5_000_000,
  /**
   * How deep blocks may start from names in prose against the order of the text: each one recurses. Other blocks may
   * form chains of any length.
   */
  chain: 500,
};
