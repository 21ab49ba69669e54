import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * Writes the page that shows a course in a layout of the site, since only Astro's own files can name a layout.
 * @param edition changes where Astro must ask anew which pages there are.
 * @returns its file.
 */
export function writeRoute(
  folder: URL,
  {
    index,
    layout,
    edition = 0,
  }: { readonly index: number; readonly layout: string; readonly edition?: number },
): string {
  const file = fileURLToPath(new URL(`course-${index}.astro`, folder));
  const text = `---
// Made by linewright, edition ${edition}.
import Layout from ${JSON.stringify(layout)};
import { hostedPage, hostedPaths } from 'linewright/astro';
export const prerender = true;
export const getStaticPaths = () => hostedPaths(${index});
const { title, description, html } = await hostedPage(${index}, Astro.params.page);
---
<Layout title={title} description={description} frontmatter={{ title, description }}>
  <Fragment set:html={html} />
</Layout>
`;
  writeFileSync(file, text);
  return file;
}
