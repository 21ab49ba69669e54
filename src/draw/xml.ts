/**
 * Text as XML and HTML write it, in content and between double quotes.
 * @throws RangeError for a control character, which XML 1.0 cannot hold (section 2.2).
 */
export function escapeXml(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.exec(text);
  if (control) {
    const code = control[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0');
    throw new RangeError(`the text of a board holds the control character U+${code}`);
  }
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
