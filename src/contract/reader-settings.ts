/**
 * What a reader sets for all courses of a host. Each stands as an attribute of that name on `<html>`, `data-theme="dark"`;
 * what is not set is as the course or the reader's system has it.
 */
export const readerSettings = {
  theme: ['light', 'dark'],
  notation: ['letters', 'english', 'figurines'],
  /** Of the boards. */
  size: ['small', 'large'],
  /** Pieces jump instead of gliding. */
  motion: ['off'],
  sound: ['on'],
  /** What the handout is printed on. */
  paper: ['a4', 'letter'],
} as const;

export type SettingName = keyof typeof readerSettings;

export type ReaderSettings = {
  readonly [Name in SettingName]?: (typeof readerSettings)[Name][number] | undefined;
};

/** Where a browser keeps them, as JSON: of the person, so no course is in the name. */
export const settingsKey = 'reader-settings';

/** Asks the script of the settings to open its form; loaded by the first who asks. */
export const settingsAsked = 'reader-settings-asked';
