/**
 * Counts the steps that hostile texts take, at three lengths, and prints them as JSON. A process of its
 * own, in which nothing is loaded before it is counted. `measure.ts [PATTERN [LENGTH]]`.
 */

import { createStepCounter } from './count-steps.ts';
import { hostileCourses } from './hostile-courses.ts';

export interface Measured {
  readonly name: string;
  readonly stage: string;
  /** For a length, twice and four times the length. */
  readonly steps: readonly number[];
  /** Where most of the steps of the longest are. */
  readonly most: string;
}

const counter = createStepCounter();
const { reportText } = await import('../../src/diagnostics/index.ts');
const { buildCourse } = await import('../../src/model/index.ts');
const { checkCourse } = await import('../../src/check/index.ts');
const { readCourse } = await import('../../src/read/index.ts');
const { renderSite } = await import('../../src/site/render/site.ts');
const { makePgn } = await import('../../src/publish/pgn/index.ts');

const [pattern = '.', length = '1000'] = process.argv.slice(2);
const found: Measured[] = [];
for (const [name, make] of Object.entries(hostileCourses)) {
  if (!new RegExp(pattern).test(name)) continue;
  const stages = new Map<string, { steps: number[]; most: string }>();
  for (const times of [1, 2, 4]) measure(make(times * Number(length)), stages);
  for (const [stage, measured] of stages) found.push({ name, stage, ...measured });
}
process.stdout.write(JSON.stringify(found));

function measure(
  made: Readonly<Record<string, string>>,
  stages: Map<string, { steps: number[]; most: string }>,
): void {
  const count = (stage: string, run: () => void) => {
    const { steps, most } = counter.count(run);
    const known = stages.get(stage);
    stages.set(stage, { steps: [...(known?.steps ?? []), steps], most });
  };
  const list = (folder: string) =>
    Object.entries(made).flatMap(([path, text]) =>
      path.startsWith(folder) ? [{ path, text }] : [],
    );
  const files = {
    settings: { path: 'course.yaml', text: made['course.yaml'] ?? '' },
    chapters: list('chapters/'),
    games: list('games/'),
    news: list('news/'),
    media: [],
    problems: [],
  };
  let draft: ReturnType<typeof readCourse> | undefined;
  let course: ReturnType<typeof buildCourse> | undefined;
  let result: ReturnType<typeof checkCourse> | undefined;
  count('read', () => {
    draft = readCourse(files);
  });
  count('model', () => {
    if (draft) course = buildCourse(draft);
  });
  count('check', () => {
    if (course) result = checkCourse(course);
  });
  count('report', () => {
    const { diagnostics = [] } = result ?? {};
    reportText(diagnostics, { textOf: (file) => made[file], color: false });
  });
  count('render', () => {
    const checked = result?.checked;
    if (!checked) return;
    renderSite(checked.course, { assets: { scripts: {}, styles: {}, fonts: [] }, offline: false });
    makePgn(checked);
  });
}
