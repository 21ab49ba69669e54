import { listDependencies, type Row } from './list.ts';

/** DEPENDENCIES.md. `sized` leaves its sizes out, which differ from system to system where packages are native. */
export function makeDependenciesPage({ sized = true } = {}): string {
  const run = listDependencies('dependencies');
  const build = listDependencies('devDependencies');
  const total = (part: typeof run) => (sized ? `${part.packages} packages, ${mb(part.size)}` : '');
  return `# What Linewright is made with

<!-- Made by scripts/make-dependencies-page.ts from package.json, package-lock.json and scripts/dependencies/reasons.ts.
     Do not edit: run it after each change of a package. -->

Sizes are of the files in \`node_modules\`, on Linux with x64; "brings" counts the packages that nothing else of the
table needs. A package that is neither native, nor large, nor full of data files is also bundled into the program
(\`scripts/build-program.mjs\`), where it loads faster.

## Installed with the program

${total(run)}

${table(run.rows, sized)}

## To build and to test

${total(build)}

${table(build.rows, sized)}
`;
}

function table(rows: readonly Row[], sized: boolean): string {
  const head = sized
    ? '| package | version | licence | size | brings | for |\n| --- | --- | --- | ---: | ---: | --- |'
    : '| package | version | licence | for |\n| --- | --- | --- | --- |';
  const lines = rows.map(({ name, version, licence, size, brings, bringsSize, why }) => {
    const more = brings === 0 ? '' : `${brings}, ${mb(bringsSize)}`;
    const numbers = sized ? ` ${mb(size)} | ${more} |` : '';
    return `| ${name} | ${version} | ${licence} |${numbers} ${why} |`;
  });
  return [head, ...lines].join('\n');
}

function mb(bytes: number): string {
  return `${(bytes / 1e6).toFixed(2)} MB`;
}
