/**
 * A comment without the clocks and times that programs write into it: `clk`, `egt`, `emt` and `mct` of the
 * supplement of 2001 to the PGN standard, and `timestamp`, which some add (common practice, no source).
 */
export function withoutClocks(comment: string): string {
  return comment.replace(/\[%(?:clk|egt|emt|mct|timestamp)\b[^\]]*\]/g, ' ');
}
