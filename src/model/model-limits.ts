/** What a course may ask of the model where each of some things is compared with each of others. */
export interface ModelLimits {
  readonly places: number;
  readonly matched: number;
  readonly chain: number;
}

export const modelLimits: ModelLimits = {
  /**
   * Places that are looked at for the moves which the texts of a chapter mention. Nearly every mention is
   * found in the block above it, at the first place; a thousand mentions that none of a thousand
   * blocks has are a million places. It is a chapter's and not the course's, so that a chapter that is kept
   * leaves the others what they had.
   */
  places: 5_000_000,
  /**
   * Positions that all patterns of a course are compared with: those of a hundred patterns in a course of
   * fifty thousand positions.
   */
  matched: 5_000_000,
  /**
   * Blocks that start from names which prose gives, one block from another against the order of the text, since
   * finding the way to the first goes in once a block. Of others there may be any number.
   */
  chain: 500,
};
