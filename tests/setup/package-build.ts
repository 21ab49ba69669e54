import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** The tests of the program and the browser run what is published: dist/ must be there. */
export default function setup(): void {
  if (
    ['cli/main.js', 'assets/manifest.json', 'site/pages/entry.mjs'].every((file) =>
      existsSync(`dist/${file}`),
    )
  )
    return;
  execFileSync(process.execPath, ['scripts/build.mjs'], { stdio: 'inherit' });
}
