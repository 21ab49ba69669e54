/** Packs `editor/` into one file that an editor of the VS Code family installs: dist/editor/linewright.vsix. */
import { createWriteStream, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { toXml } from 'xast-util-to-xml';
import { x } from 'xastscript';
import { ZipFile } from 'yazl';
import { bundledLicences } from './bundled-licences.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = join(root, 'editor');
/** Zip files name a day; that of none of our editions is wanted. */
const day = new Date(2000, 0, 1);

export async function packEditor() {
  const { outputFiles, metafile } = await build({
    entryPoints: [join(source, 'extension.ts')],
    outfile: 'extension.cjs',
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    external: ['vscode'],
    write: false,
    metafile: true,
    legalComments: 'none',
  });
  const about = JSON.parse(readFileSync(join(source, 'package.json'), 'utf8'));
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const manifest = { ...about, version };
  const zip = new ZipFile();
  const add = (name, content) => zip.addBuffer(Buffer.from(content), name, { mtime: day });
  add('[Content_Types].xml', contentTypes(['json', 'cjs', 'md', 'txt', 'vsixmanifest']));
  add('extension.vsixmanifest', packageManifest(manifest));
  add('extension/package.json', `${JSON.stringify(manifest, null, 2)}\n`);
  add('extension/extension.cjs', outputFiles[0].contents);
  add('extension/README.md', readFileSync(join(source, 'README.md')));
  add('extension/LICENSE.txt', readFileSync(join(root, 'LICENSE')));
  add('extension/LICENCES-BUNDLED.txt', await bundledLicences(Object.keys(metafile.inputs)));
  for (const name of readdirSync(join(source, 'syntaxes')).sort()) {
    add(`extension/syntaxes/${name}`, readFileSync(join(source, 'syntaxes', name)));
  }
  zip.end();
  const folder = join(root, 'dist/editor');
  mkdirSync(folder, { recursive: true });
  await pipeline(zip.outputStream, createWriteStream(join(folder, 'linewright.vsix')));
}

/** The part of the Open Packaging Conventions that every such file needs. */
function contentTypes(endings) {
  const types = {
    json: 'application/json',
    cjs: 'application/javascript',
    md: 'text/markdown',
    txt: 'text/plain',
    vsixmanifest: 'text/xml',
  };
  return toXml([
    { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="utf-8"' },
    x(
      'Types',
      { xmlns: 'http://schemas.openxmlformats.org/package/2006/content-types' },
      endings.map((one) => x('Default', { Extension: `.${one}`, ContentType: types[one] })),
    ),
  ]);
}

function packageManifest({
  name,
  version,
  publisher,
  displayName,
  description,
  categories,
  engines,
}) {
  const asset = (type, path) => x('Asset', { Type: type, Path: path, Addressable: 'true' });
  return toXml([
    { type: 'instruction', name: 'xml', value: 'version="1.0" encoding="utf-8"' },
    x(
      'PackageManifest',
      { Version: '2.0.0', xmlns: 'http://schemas.microsoft.com/developer/vsx-schema/2011' },
      [
        x('Metadata', [
          x('Identity', { Language: 'en-US', Id: name, Version: version, Publisher: publisher }),
          x('DisplayName', displayName),
          x('Description', { 'xml:space': 'preserve' }, description),
          x('Tags', 'chess,markdown'),
          x('Categories', categories.join(',')),
          x('GalleryFlags', 'Public'),
          x('Properties', [
            x('Property', { Id: 'Microsoft.VisualStudio.Code.Engine', Value: engines.vscode }),
            x('Property', { Id: 'Microsoft.VisualStudio.Code.ExtensionKind', Value: 'workspace' }),
          ]),
          x('License', 'extension/LICENSE.txt'),
        ]),
        x('Installation', [x('InstallationTarget', { Id: 'Microsoft.VisualStudio.Code' })]),
        x('Dependencies'),
        x('Assets', [
          asset('Microsoft.VisualStudio.Code.Manifest', 'extension/package.json'),
          asset('Microsoft.VisualStudio.Services.Content.Details', 'extension/README.md'),
          asset('Microsoft.VisualStudio.Services.Content.License', 'extension/LICENSE.txt'),
        ]),
      ],
    ),
  ]);
}
