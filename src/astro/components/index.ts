/** Components for pages of an Astro site, in `.astro` and MDX files. Each is checked as a course is. */
export { default as Board } from './Board.astro';
export { default as Diagram } from './Diagram.astro';
export { default as Exercise } from './Exercise.astro';
export { default as Moves } from './Moves.astro';
export type { BoardProps, DiagramProps, ExerciseProps, MovesProps } from './properties.ts';
