/** What the browser has kept under a key; nothing where it keeps nothing, or does not let the page ask. */
export function keptText(key: string, storage = () => localStorage): string | null {
  try {
    return storage().getItem(key);
  } catch {
    return null;
  }
}
