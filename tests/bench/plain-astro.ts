import { mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { type Cost, measure, root } from './measure.ts';

/** The same Markdown with its blocks as code, to be built in full by Astro alone with one layout. */
export function plainAstro(course: string, work: string): () => Cost {
  const folder = path.join(work, 'plain-astro');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(path.join(folder, 'src/pages'), { recursive: true });
  mkdirSync(path.join(folder, 'src/layouts'), { recursive: true });
  symlinkSync(path.join(root, 'node_modules'), path.join(folder, 'node_modules'));
  writeFileSync(
    path.join(folder, 'src/layouts/page.astro'),
    '---\nconst { frontmatter } = Astro.props;\n---\n<html lang="en"><head><title>{frontmatter.title}</title></head><body><slot /></body></html>\n',
  );
  for (const name of readdirSync(path.join(course, 'chapters'))) {
    const text = readFileSync(path.join(course, 'chapters', name), 'utf8');
    const page = text.replace('---\n', '---\nlayout: ../layouts/page.astro\n');
    writeFileSync(path.join(folder, 'src/pages', name), page);
  }
  writeFileSync(
    path.join(folder, 'astro.config.mjs'),
    'export default { markdown: { syntaxHighlight: false }, devToolbar: { enabled: false } };\n',
  );
  const astro = path.join(root, 'node_modules/astro/bin/astro.mjs');
  const clean = () => rmSync(path.join(folder, 'dist'), { recursive: true, force: true });
  return () => measure([astro, 'build', '--silent'], { work, cwd: folder, prepare: clean });
}
