import { ownData } from './own-data.ts';

declare global {
  /** Set by the script that follows the author's files; each script of the desk is bundled by itself. */
  var shownDeskVersion: number | undefined;
}

/** `DeskState.version` that the page shows. */
export function shownVersion(): number {
  return globalThis.shownDeskVersion ?? Number(ownData.version);
}

export function setShownVersion(version: number): void {
  globalThis.shownDeskVersion = version;
}
