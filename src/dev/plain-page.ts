import { escapeHtml } from '../site/index.ts';

/** A page of the preview that is not of a course, such as a list of courses. */
export interface PlainPage {
  /** BCP 47. */
  readonly language: string;
  readonly title: string;
  readonly styles: readonly string[];
  /** HTML below the title. */
  readonly content: readonly string[];
}

export function plainPage({ language, title, styles, content }: PlainPage): string {
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
${styles.map((style) => `<link rel="stylesheet" href="${style}">`).join('\n')}
<title>${escapeHtml(title)}</title>
</head>
<body class="desk-trouble">
<main>
<h1>${escapeHtml(title)}</h1>
${content.join('\n')}
</main>
</body>
</html>
`;
}
