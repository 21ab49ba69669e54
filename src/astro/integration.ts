import type { AstroConfig, AstroIntegration, AstroIntegrationLogger } from 'astro';
import { readAssets } from '../site/index.ts';
import { openBridge } from './bridge.ts';
import { type BuiltCourse, buildBeside, builtPage, putInto } from './build.ts';
import { type CourseInSite, type CourseOptions, readOptions } from './options.ts';
import { type PlaceInSite, placeIn } from './place.ts';
import { type PreviewInSite, previewIn } from './preview.ts';
import { rehouse } from './rehouse.ts';
import { siteError } from './site-error.ts';
import { writeRoute } from './write-route.ts';

/**
 * An Astro integration that puts courses into a site: each is checked and built with it, and stands below its path.
 *
 *     integrations: [linewright({ course: './my-course', path: '/courses/italian' })]
 *
 * An error in a course stops `astro build` with all findings; `astro dev` shows the course as it is written.
 */
export default function linewright(
  options: CourseOptions | readonly CourseOptions[] = [],
): AstroIntegration {
  let courses: readonly CourseInSite[] = [];
  let places: readonly PlaceInSite[] = [];
  let previews: readonly PreviewInSite[] = [];
  let built: readonly BuiltCourse[] = [];
  let routes = new URL('file:///');
  return {
    name,
    hooks: {
      'astro:config:setup'({ config, createCodegenDir, injectRoute, updateConfig }) {
        refuseTwice(config);
        courses = readOptions(options, config.root);
        routes = createCodegenDir();
        for (const [index, { path, layout }] of courses.entries()) {
          if (layout === undefined) continue;
          const entrypoint = writeRoute(routes, { index, layout });
          injectRoute({ pattern: `/${path}/[...page]`, entrypoint, prerender: true });
        }
        updateConfig({ vite: { plugins: [loadedByNode] } });
      },
      'astro:config:done'({ config, buildOutput, logger }) {
        places = courses.map((course) => placeIn(config, course));
        openBridge({
          pages: async (course) => (await hostedBy(course)).map(nameOf),
          page: (course, page) =>
            hostedPage(course, page === undefined ? 'index.html' : `${page}.html`),
        });
        tellOfServer(buildOutput, logger);
      },
      'astro:routes:resolved'({ routes }) {
        for (const { path, given } of courses) {
          const page = routes.find(
            ({ origin, pathname }) =>
              origin === 'project' && pathname?.replaceAll(/^\/+|\/+$/g, '') === path,
          );
          if (page === undefined) continue;
          throw siteError(
            `the site has a page at /${path} of its own, ${page.entrypoint}, where the course in \`${given.course}\` would stand`,
            'move the page, or give the course another `path`',
          );
        }
      },
      'astro:server:setup'({ server, logger }) {
        previews = places.map((place, index) =>
          previewIn(place, logger, (edition) => {
            if (place.layout !== undefined)
              writeRoute(routes, { index, layout: place.layout, edition });
          }),
        );
        for (const { answer } of previews) server.middlewares.use(answer);
      },
      async 'astro:server:done'() {
        await Promise.all(previews.map((preview) => preview.close()));
      },
      async 'astro:build:start'({ logger }) {
        const all: BuiltCourse[] = [];
        for (const place of places) all.push(await buildBeside(place, logger));
        built = all;
      },
      async 'astro:build:done'({ dir, logger }) {
        for (const course of built) await putInto(course, dir, logger);
      },
    },
  };

  async function hostedBy(course: number): Promise<readonly string[]> {
    return built[course]?.hosted ?? (await previews[course]?.hosted()) ?? [];
  }

  async function hostedPage(course: number, file: string) {
    const place = places[course];
    const one = built[course];
    const page = one ? await builtPage(one, file) : await previews[course]?.page(file);
    if (place === undefined || page === undefined)
      throw new Error(`${file} is no page of a course`);
    const { styles, scripts } = await readAssets();
    const { hosted: sheet = '' } = styles;
    const { address = '' } = scripts;
    return rehouse(page, { root: place.root, file, sheet, address });
  }
}

const name = 'linewright';

/** Our modules find files beside themselves, and are shared with the integration: Vite leaves them to Node. */
const loadedByNode = {
  name,
  configEnvironment: (environment: string) =>
    environment === 'client' ? undefined : { resolve: { external: ['linewright/astro'] } },
};

function nameOf(file: string): string | undefined {
  return file === 'index.html' ? undefined : file.replace(/\.html$/, '');
}

function refuseTwice({ integrations }: AstroConfig): void {
  if (integrations.filter((each) => each.name === name).length < 2) return;
  throw siteError(
    'the integration stands twice in `integrations`',
    'give all courses to one: `linewright([{ course: …, path: … }, { course: …, path: … }])`',
  );
}

/** What a course is published as is files. */
function tellOfServer(output: 'static' | 'server', logger: AstroIntegrationLogger): void {
  if (output === 'server') {
    logger.info('Courses are files, which the host must serve beside the server.');
  }
}
