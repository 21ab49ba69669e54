import type { OpenShelf } from '../../pipeline/shelf/index.ts';
import { readSettings } from '../../read/index.ts';
import { readAssets } from '../../site/index.ts';

/** The page that leads an author to the previews of the courses; readers have another one, which a build makes. */
export async function shelfPage({ courses, files }: OpenShelf): Promise<string> {
  const { course: style = '' } = (await readAssets()).styles;
  const { title, language } = files.settings;
  const items = courses.map(({ id, path, settings }) => {
    const named = settings && readSettings(settings).settings;
    const words = escapeHtml(named?.title ?? path);
    const lang = named ? ` lang="${escapeHtml(named.language)}"` : '';
    return `<li><a href="/${encodeURIComponent(id)}/"${lang}>${words}</a></li>`;
  });
  const problems = files.problems.map(
    ({ place, message, hint }) =>
      `<li>${escapeHtml(`${place.file}, line ${place.start.line}: ${message} ${hint}`)}</li>`,
  );
  return `<!doctype html>
<html lang="${escapeHtml(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<link rel="stylesheet" href="/${style}">
<title>${escapeHtml(title)}</title>
</head>
<body class="desk-trouble">
<main>
<h1>${escapeHtml(title)}</h1>
${problems.length > 0 ? `<ul>${problems.join('')}</ul>` : ''}
<ul>${items.join('')}</ul>
<p lang="en">The preview of each course follows its files. The first page of the shelf, its search, its practice and its comparison of games are made by <code>linewright build</code>.</p>
</main>
</body>
</html>
`;
}

function escapeHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
