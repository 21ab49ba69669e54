export { inTranslation } from './in-translation.ts';
export { originFile } from './origin.ts';
export { findingsInTranslation } from './places.ts';
export { type PlannedFile, planTranslation, type TranslationPlan } from './plan-translation.ts';
export { languageName, readTranslations, type Translation } from './read-translations.ts';
