import type { DeskState } from '../contract/index.ts';

/**
 * A page for a course of which nothing can be shown yet. The desk's script lists on it what is to be mended, and loads
 * the course as soon as there is one.
 * @param styles addresses of the style sheets of the site.
 */
export function troublePage({ findings, trouble }: DeskState, styles: readonly string[]): string {
  const lead = trouble ?? (findings.length === 0 ? 'The course is being read.' : undefined);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${styles.map((style) => `<link rel="stylesheet" href="${style}">`).join('\n')}
<title>Nothing to show yet</title>
</head>
<body class="desk-trouble">
<main>
<h1>Nothing to show yet</h1>
<p>${escapeHtml(lead ?? 'The course cannot be read as it stands.')}</p>
<p>This page becomes the course as soon as its files can be read.</p>
</main>
</body>
</html>
`;
}

function escapeHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
