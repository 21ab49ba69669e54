import { plainPage } from '../../dev/index.ts';
import type { OpenShelf } from '../../pipeline/shelf/index.ts';
import { readSettings } from '../../read/index.ts';
import { escapeHtml, readAssets } from '../../site/index.ts';

/** The author's list of the previews of a shelf's courses. Readers get another page, made by the build. */
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
  return plainPage({
    language,
    title,
    styles: [`/${style}`],
    content: [
      ...(problems.length > 0 ? [`<ul>${problems.join('')}</ul>`] : []),
      `<ul>${items.join('')}</ul>`,
      '<p lang="en">The preview of each course follows its files. The first page of the shelf, its search, its practice and its comparison of games are made by <code>linewright build</code>.</p>',
    ],
  });
}
