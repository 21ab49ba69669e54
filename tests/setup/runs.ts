/**
 * How many times as many random cases a run tries, and whether searches go to their end. `npm test`
 * has 1; `npm run test:full`, for the night, more. A random test that fails prints its seed.
 */
export const multiple = Number(process.env.LINEWRIGHT_TEST_RUNS ?? 1);

if (!(multiple > 0)) {
  throw new Error(`LINEWRIGHT_TEST_RUNS is ${process.env.LINEWRIGHT_TEST_RUNS}: give a number`);
}

/** Where random tests begin: by day all runs try the same cases, at night each tries others. */
export const seed = multiple > 1 ? Math.floor(Math.random() * 2 ** 31) : 19940312;

/** Random cases of a test that has so many in `npm test`. */
export const runs = (usual: number): number => Math.ceil(usual * multiple);
