/**
 * How many times as many random cases a run tries, and whether searches go to their end. `npm test` has half of
 * them, since it tries the same ones each time; `npm run test:full`, for the night, ten times as many. A random test
 * that fails prints its seed.
 */
export const multiple = Number(process.env.LINEWRIGHT_TEST_RUNS ?? 0.5);

if (!(multiple > 0)) {
  throw new Error(`LINEWRIGHT_TEST_RUNS is ${process.env.LINEWRIGHT_TEST_RUNS}: give a number`);
}

/** Where random tests begin: by day all runs try the same cases, at night each tries others. */
export const seed = multiple > 1 ? Math.floor(Math.random() * 2 ** 31) : 19940312;

/** Random cases of a test that has so many where `multiple` is 1. */
export const runs = (usual: number): number => Math.ceil(usual * multiple);

/** Of things that are alike so many, evenly spread over all; at night all. */
export function someOf<Thing>(all: readonly Thing[], byDay: number): readonly Thing[] {
  return multiple > 1 ? all : spread(all, byDay);
}

/** At most so many, evenly spread over all. */
export function spread<Thing>(all: readonly Thing[], most: number): readonly Thing[] {
  if (all.length <= most) return all;
  return all.filter(
    (_, index) =>
      Math.floor(((index + 1) * most) / all.length) > Math.floor((index * most) / all.length),
  );
}
