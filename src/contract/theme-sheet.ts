/** Where the sheet of a course's own look stands in a site, named by its content. */
export function themeSheet(edition: string): string {
  return `theme.${edition}.css`;
}

/** Whether an address is that of such a sheet: the preview changes it in an open page. */
export function isThemeSheet(address: string): boolean {
  return /(?:^|\/)theme\.[0-9a-f]+\.css$/.test(address);
}

/** Where the same stands for pages in the layout of another site. */
export function hostedThemeSheet(sheet: string): string {
  return sheet.replace(/theme(?=\.[0-9a-f]+\.css$)/, 'theme-hosted');
}
