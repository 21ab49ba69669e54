/** A text in the browser's storage, if there is one and the page may ask. */
export function keptText(key: string, storage = () => localStorage): string | null {
  try {
    return storage().getItem(key);
  } catch {
    return null;
  }
}
