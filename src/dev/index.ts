/** The preview of a course that its author works on: its pages with the scripts of the desk, served while files change. */
export type { DeskPart } from './desk-door.ts';
export { type DevServer, devServer } from './dev-server.ts';
export { openInEditor } from './open-in-editor.ts';
export { type CourseOnPages, writeRoutes } from './write/index.ts';
