/** A point in a text file: line and column count from 1, columns and the offset in UTF-16 units. */
export interface Point {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

/** A stretch of a text file; `end` is the point just after its last character. */
export interface Range {
  readonly start: Point;
  readonly end: Point;
}

/** A range and the file it stands in: a path relative to the course folder, with `/`. */
export interface Place extends Range {
  readonly file: string;
}
