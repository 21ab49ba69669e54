import type {
  AstroConfig,
  AstroIntegration,
  AstroIntegrationLogger,
  IntegrationResolvedRoute,
} from 'astro';
import { readAssets } from '../site/index.ts';
import { openBridge } from './bridge.ts';
import { type BuiltCourse, buildBeside, builtPage, putInto } from './build.ts';
import { componentsOf, type SiteComponents } from './components-of-site.ts';
import { type CourseInSite, type CourseOptions, readOptions } from './options.ts';
import { type PlaceInSite, placeIn } from './place.ts';
import { type PreviewInSite, previewIn } from './preview.ts';
import { rehouse } from './rehouse.ts';
import type { ComponentSite } from './render-component.ts';
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
  let components: SiteComponents | undefined;
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
      async 'astro:config:done'({ config, buildOutput, logger }) {
        const parts = await componentsOf(config);
        components = parts;
        places = courses.map((course) => placeIn(config, course));
        openBridge({
          rootOf: (folder) => places.find((place) => place.folder === folder)?.root,
          component: async (name, props, page) =>
            parts.render(name, props, page, await allCourses()),
          pages: async (course) => (await hostedBy(course)).map(nameOf),
          page: (course, page) =>
            hostedPage(course, page === undefined ? 'index.html' : `${page}.html`),
        });
        tellOfServer(buildOutput, logger);
      },
      'astro:routes:resolved'({ routes }) {
        refuseTaken(courses, routes);
      },
      'astro:server:setup'({ server, logger }) {
        previews = places.map((place, index) =>
          previewIn(place, logger, (edition) => {
            if (place.layout !== undefined)
              writeRoute(routes, { index, layout: place.layout, edition });
          }),
        );
        for (const { answer } of previews) server.middlewares.use(answer);
        if (components) server.middlewares.use(components.answer);
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
        await components?.putInto(dir);
      },
    },
  };

  async function allCourses(): Promise<ComponentSite['courses']> {
    const all = await Promise.all(
      places.map(async ({ root, path, folder }, index) => {
        const course = built[index]?.course ?? (await previews[index]?.course());
        const names = [path, places[index]?.given.course.replaceAll(/^[./]+|\/+$/g, '') ?? folder];
        return course && { names, root, course };
      }),
    );
    return all.filter((each) => each !== undefined);
  }

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

/** @throws AstroUserError where a page of the site stands at the path of a course. */
function refuseTaken(
  courses: readonly CourseInSite[],
  routes: readonly Pick<IntegrationResolvedRoute, 'origin' | 'pathname' | 'entrypoint'>[],
): void {
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
}
