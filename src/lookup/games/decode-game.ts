const utf8 = new TextDecoder('utf-8', { fatal: true });
/** Latin-1 as browsers and Windows understand it: with quotes and dashes where Latin-1 has controls. */
const latin1 = new TextDecoder('windows-1252');

/**
 * The text of a game: UTF-8, else Latin-1, the PGN standard's own set (section 4.1). Judged game by
 * game, since files are often put together from several.
 */
export function decodeGame(bytes: Uint8Array): string {
  try {
    return utf8.decode(bytes);
  } catch {
    return latin1.decode(bytes);
  }
}
