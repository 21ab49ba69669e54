import { constants } from 'node:fs';
import { copyFile, mkdir, writeFile } from 'node:fs/promises';
import type { ServerResponse } from 'node:http';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroConfig } from 'astro';
import sirv from 'sirv';
import { assetsFolder, lineScriptFile, readAssets } from '../site/index.ts';
import { stringsFor } from '../strings/index.ts';
import type { ComponentName, ComponentProps } from './component-source.ts';
import type { ConnectRequest } from './preview.ts';
import { type ComponentSite, renderComponent } from './render-component.ts';

/** The components of a site, and the files that they load. */
export interface SiteComponents {
  readonly render: (
    name: ComponentName,
    props: ComponentProps,
    page: object,
    courses: ComponentSite['courses'],
  ) => string;
  /** Answers for their files, and leaves all else to the next. */
  readonly answer: (request: ConnectRequest, response: ServerResponse, next: () => void) => void;
  /** Puts those into the site, if any component was rendered. */
  readonly putInto: (dir: URL) => Promise<void>;
}

/** @param config as all integrations have left it. */
export async function componentsOf({
  base,
  build,
  srcDir,
  i18n,
}: Pick<AstroConfig, 'base' | 'build' | 'srcDir' | 'i18n'>): Promise<SiteComponents> {
  const folder = `${build.assets}/linewright`;
  const root = `/${base}/${folder}/`.replaceAll(/\/+/g, '/');
  const language = i18n?.defaultLocale ?? 'en';
  const { scripts, styles } = await readAssets();
  const line = await lineScriptFile({ scripts, styles, fonts: [] }, stringsFor(language));
  const address = (file: string | undefined) => root + path.posix.basename(file ?? '');
  const site = {
    sources: fileURLToPath(srcDir),
    language,
    sheet: address(styles.hosted),
    script: address(scripts.course),
    line: address(line.path),
    solver: address(scripts.exercise),
  };
  const begun = new WeakSet<object>();
  let isUsed = false;
  const serve = sirv(assetsFolder, { dev: true });
  return {
    render(name, props, page, courses) {
      const isFirst = !begun.has(page);
      const html = renderComponent(name, props, { ...site, courses }, isFirst);
      // A board alone has its pieces within itself.
      if (name !== 'Board') begun.add(page);
      isUsed = true;
      return html;
    },
    answer(request, response, next) {
      const [asked = ''] = (request.originalUrl ?? request.url ?? '').split('?', 1);
      if (!asked.startsWith(root)) return next();
      if (asked === root + line.path) {
        response.writeHead(200, { 'content-type': 'text/javascript; charset=utf-8' });
        response.end(line.content);
        return;
      }
      request.url = asked.slice(root.length - 1);
      serve(request, response, next);
    },
    async putInto(dir) {
      if (!isUsed) return;
      const to = path.join(fileURLToPath(dir), folder);
      await mkdir(to, { recursive: true });
      await writeFile(path.join(to, line.path), line.content);
      const { fonts } = await readAssets();
      for (const file of [styles.hosted, scripts.course, scripts.exercise, ...fonts]) {
        const name = path.posix.basename(file ?? '');
        await copyFile(
          path.join(assetsFolder, name),
          path.join(to, name),
          constants.COPYFILE_FICLONE,
        );
      }
    },
  };
}
