/**
 * What every JSON output of a command begins with. It grows when a field goes, gets another name or means something
 * else, and not when one is added. `scripts/handbook/json-outputs.ts` describes the outputs.
 */
export const jsonVersion = 1;
