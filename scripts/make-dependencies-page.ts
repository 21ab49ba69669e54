/** Writes DEPENDENCIES.md: `node scripts/make-dependencies-page.ts`. */
import { writeFileSync } from 'node:fs';
import { makeDependenciesPage } from './dependencies/page.ts';

writeFileSync(new URL('../DEPENDENCIES.md', import.meta.url), makeDependenciesPage());
