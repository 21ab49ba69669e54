import { fileURLToPath } from 'node:url';

/** The folder of this package; `src/site/build` and `dist/site/build` lie equally deep. */
export const packageRoot = fileURLToPath(new URL('../../..', import.meta.url));
