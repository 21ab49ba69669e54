/** Where an author may keep what an engine said. */
export const resultPlaces = ['course', 'cache'] as const;
export type ResultPlace = (typeof resultPlaces)[number];
