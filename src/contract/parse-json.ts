/** What a text that was kept somewhere says; nothing where it is absent, or not JSON. */
export function parseJson(text: string | null): unknown {
  try {
    return JSON.parse(text ?? '');
  } catch {
    return undefined;
  }
}
