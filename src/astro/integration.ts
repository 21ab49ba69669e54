import type { AstroConfig, AstroIntegration, AstroIntegrationLogger } from 'astro';
import { type BuiltCourse, buildInto, checkToBuild } from './build.ts';
import { type CourseInSite, type CourseOptions, readOptions } from './options.ts';
import { type PlaceInSite, placeIn } from './place.ts';
import { previewIn } from './preview.ts';
import { siteError } from './site-error.ts';

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
  let checked: readonly BuiltCourse[] = [];
  const opened: { close(): Promise<void> }[] = [];
  return {
    name,
    hooks: {
      'astro:config:setup'({ config }) {
        refuseTwice(config);
        courses = readOptions(options, config.root);
      },
      'astro:config:done'({ config, buildOutput, logger }) {
        places = courses.map((course) => placeIn(config, course));
        warnOfServer(buildOutput, logger);
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
        for (const place of places) {
          const preview = previewIn(place, logger);
          opened.push(preview);
          server.middlewares.use(preview.answer);
        }
      },
      async 'astro:server:done'() {
        await Promise.all(opened.splice(0).map((preview) => preview.close()));
      },
      async 'astro:build:start'({ logger }) {
        const all: BuiltCourse[] = [];
        for (const place of places) all.push(await checkToBuild(place, logger));
        checked = all;
      },
      async 'astro:build:done'({ dir, logger }) {
        for (const course of checked) await buildInto(course, dir, logger);
      },
    },
  };
}

const name = 'linewright';

function refuseTwice({ integrations }: AstroConfig): void {
  if (integrations.filter((each) => each.name === name).length < 2) return;
  throw siteError(
    'the integration stands twice in `integrations`',
    'give all courses to one: `linewright([{ course: …, path: … }, { course: …, path: … }])`',
  );
}

/** What a course is published as is files. */
function warnOfServer(output: 'static' | 'server', logger: AstroIntegrationLogger): void {
  if (output === 'server')
    logger.info('Courses are files, which the host must serve beside the server.');
}
