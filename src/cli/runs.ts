/** A command's action: its code is loaded when it is called, and returns the exit code. */
export function runs<Values extends unknown[]>(
  load: () => Promise<(...values: Values) => number | Promise<number>>,
) {
  return async (...values: Values): Promise<void> => {
    const run = await load();
    process.exitCode = await run(...values);
  };
}
