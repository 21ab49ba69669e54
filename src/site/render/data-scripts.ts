/**
 * Data for pages, as scripts: a page opened from a folder (file://), or its worker, may load scripts but not fetch. They
 * hold JSON as text, which parses faster than a literal.
 */
import { createHash } from 'node:crypto';
import {
  type CourseExercises,
  type CourseNotes,
  type CourseTable,
  type FreePlay,
  freePlayFailed,
  freePlayLoader,
  tableLoaded,
  tableLoader,
  writeWords,
} from '../../contract/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { AssetPaths, SiteFile } from '../site-data.ts';

/** The table of a course, named by its edition. */
export function tableScript(table: CourseTable): SiteFile {
  const text = JSON.stringify(JSON.stringify(table));
  return {
    path: `course-table.${table.edition}.js`,
    content: `globalThis.courseTable=JSON.parse(${text});\n`,
  };
}

/** A script of fixed name that loads the table. */
export function tableLoaderScript({ path }: SiteFile): SiteFile {
  const content =
    `const table=document.createElement('script');` +
    `table.src=new URL('${path}',document.currentScript.src);` +
    `table.onload=()=>dispatchEvent(new Event('${tableLoaded}'));document.head.append(table);`;
  return { path: tableLoader, content: `{${content}}\n` };
}

/** The words of the reader's settings, named by their content. */
export function readerWordsScript(strings: Strings): SiteFile {
  const json = writeWords('settings', strings);
  const edition = createHash('sha256').update(json).digest('hex').slice(0, 12);
  return {
    path: `reader-words.${edition}.js`,
    content: `globalThis.readerWords=JSON.parse(${JSON.stringify(json)});\n`,
  };
}

/** The script that loads free play at the reader's first act on a chapter's board. @throws if the package lacks a part of it. */
export function freePlayScript(free: FreePlay, { scripts, styles }: AssetPaths): SiteFile {
  const { free: script } = scripts;
  const { free: style } = styles;
  if (script === undefined || style === undefined) {
    throw new Error('scripts/build-browser.mjs makes nothing named free');
  }
  const content =
    `globalThis.freePlay=JSON.parse(${JSON.stringify(JSON.stringify(free))});` +
    `const at=document.currentScript.src,link=document.createElement('link'),script=document.createElement('script');` +
    `link.rel='stylesheet';link.href=new URL('${style}',at);` +
    `script.src=new URL('${script}',at);` +
    `script.onerror=()=>dispatchEvent(new Event('${freePlayFailed}'));document.head.append(link,script);`;
  return { path: freePlayLoader, content: `{${content}}\n` };
}

/** The exercises of a course, for practice, named by their content. */
export function exercisesScript(exercises: CourseExercises): SiteFile {
  const json = JSON.stringify(exercises);
  const edition = createHash('sha256').update(json).digest('hex').slice(0, 12);
  return {
    path: `course-exercises.${edition}.js`,
    content: `globalThis.courseExercises=JSON.parse(${JSON.stringify(json)});\n`,
  };
}

/** What practice needs beside the table, named by its content. */
export function notesScript(notes: CourseNotes): SiteFile {
  const json = JSON.stringify(notes);
  const edition = createHash('sha256').update(json).digest('hex').slice(0, 12);
  return {
    path: `course-notes.${edition}.js`,
    content: `globalThis.courseNotes=JSON.parse(${JSON.stringify(json)});\n`,
  };
}
