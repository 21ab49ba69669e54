import type { PageLocals } from './site-data.ts';

declare global {
  namespace App {
    /** What a page reads as `Astro.locals`. */
    interface Locals extends PageLocals {}
  }
}
