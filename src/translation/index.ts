export { inTranslation } from './in-translation.ts';
export { findingsInTranslation } from './places.ts';
export { type PlannedFile, planTranslation } from './plan-translation.ts';
export {
  type ComparedFile,
  filesOfTranslation,
  languageName,
  readTranslations,
  type Translation,
  type TranslationOptions,
  withTranslationProblems,
} from './read-translations.ts';
