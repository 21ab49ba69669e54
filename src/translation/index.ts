export { inTranslation } from './in-translation.ts';
export { findingsInTranslation } from './places.ts';
export { languageName, readTranslations, type Translation } from './read-translations.ts';
