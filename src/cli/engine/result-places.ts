export const resultPlaces = ['course', 'cache'] as const;
export type ResultPlace = (typeof resultPlaces)[number];
