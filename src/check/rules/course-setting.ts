import { type Finding, nearestName } from '../../diagnostics/index.ts';
import { type CourseRule, type CourseScope, defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

const examples: Parameters<typeof defineCourseRule>[0]['examples'] = [
  {
    title: 'A misspelt key and a wrong value',
    course: {
      'course.yaml': 'title: Test\nside: green\nauther: A. Coach\n',
      'chapters/1.md': '---\ntitle: One\n---\n',
    },
    findings: [
      {
        file: 'course.yaml',
        at: '2:7-2:12',
        message: '`side` must be `white`, `black` or `both`.',
        hint: 'Write it like this: `side: white`.',
      },
      {
        file: 'course.yaml',
        at: '3:1-3:7',
        message: 'course.yaml has no `auther`.',
        hint: 'Did you mean `author`?',
      },
    ],
  },
  {
    title: 'A rule that does not exist',
    course: {
      'course.yaml': 'title: Test\nside: white\nrules:\n  move-numbers: off\n',
      'chapters/1.md': '---\ntitle: One\n---\n',
    },
    findings: [
      {
        file: 'course.yaml',
        at: '4:3-4:15',
        message: 'There is no rule `move-numbers`.',
        hint: 'Did you mean `move-number`?',
      },
    ],
  },
  {
    title: 'A course that begins nowhere, and margins that are none',
    course: {
      'course.yaml':
        'title: Test\nside: white\nbegins: mian\nengine:\n  margin: 80\n  equal: 0.1\n',
      'chapters/1.md': '---\ntitle: One\n---\n```moves\n1. e4 {:here[main]}\n```\n',
    },
    findings: [
      {
        file: 'course.yaml',
        at: '3:9-3:13',
        message: '`begins` names the position `mian`, and no chapter gives that name.',
        hint: 'Did you mean `main`?',
      },
      {
        file: 'course.yaml',
        at: '5:11-5:13',
        message: '`engine.margin` must be a number of pawns from 0 to 5, such as `0.8`.',
      },
    ],
  },
  {
    title: 'A cover that shows nothing, and a list that is none',
    course: {
      'course.yaml': 'title: Test\nside: white\ncover: tabiya\nteaches: everything\n',
      'chapters/1.md': '---\ntitle: One\n---\n```moves\n1. e4 {:here[main]}\n```\n',
    },
    findings: [
      {
        file: 'course.yaml',
        at: '3:8-3:14',
        message: '`cover` names the position `tabiya`, and no chapter gives that name.',
        hint: 'Write `:here[…]` with this name behind the move that the course is known by.',
      },
      {
        file: 'course.yaml',
        at: '4:10-4:20',
        message:
          '`teaches` must be a list of one to nine texts, each on a line of its own behind `- `.',
      },
    ],
  },
  {
    title: 'A rule that no course can do without',
    course: {
      'course.yaml': 'title: Test\nside: white\nrules:\n  move-illegal: off\n',
      'chapters/1.md': '---\ntitle: One\n---\n',
    },
    findings: [
      {
        file: 'course.yaml',
        at: '4:3-4:15',
        message: 'The rule `move-illegal` cannot be changed: nothing is published against it.',
        hint: 'Leave this line out.',
      },
    ],
  },
];

/** Takes all rules, to know which of the `rules` setting exist and can be changed. */
export function makeCourseSetting(allRules: () => readonly CourseRule[]) {
  return defineCourseRule({
    id: 'course-setting',
    severity: 'error',
    always: true,
    finds: 'A setting in `course.yaml` that is missing, misspelt or of the wrong type.',
    documentation: `
\`course.yaml\` needs \`title\` and \`side\`. It may have \`id\`, \`author\`, \`summary\`, \`language\`, \`site\`,
\`licence\`, \`rules\`, \`own-rules\`, \`notation\`, \`pieces\`, \`begins\`, \`cover\`, \`for\`, \`teaches\`, \`logo\`, \`icon\`, \`card\`,
\`certified\` and \`engine\`; nothing else. Under \`rules\` a rule is set to \`error\`, \`warning\`
or \`off\`; rules without which a course cannot be built cannot be changed.
`,
    examples,
    *inCourse(course) {
      yield* problemsOf('course-setting', course);
      yield* unknownPosition(course, 'begins', 'where the subject starts');
      yield* unknownPosition(course, 'cover', 'that the course is known by');
      yield* wrongRules(course, [...allRules(), ...course.course.own.rules]);
    },
  });
}

/** A setting that names a position which no chapter has. */
function* unknownPosition(
  { settings, settingPlaces, course }: CourseScope,
  setting: 'begins' | 'cover',
  which: string,
): Generator<Finding> {
  const name = settings[setting];
  const place = settingPlaces[setting];
  if (name === undefined || !place || course.ask('given', name)) return;
  const near = course.ask('nearestName', name);
  yield {
    place,
    message: `\`${setting}\` names the position \`${name}\`, and no chapter gives that name.`,
    hint: near
      ? `Did you mean \`${near}\`?`
      : `Write \`:here[…]\` with this name behind the move ${which}.`,
  };
}

function* wrongRules(
  { settings, settingPlaces, course }: CourseScope,
  all: readonly Pick<CourseRule, 'id' | 'always'>[],
): Generator<Finding> {
  for (const rule of Object.keys(settings.rules)) {
    const place = settingPlaces[`rules.${rule}`];
    if (!place) continue;
    const known = all.find(({ id }) => id === rule);
    if (known?.always) {
      yield {
        place,
        message: `The rule \`${rule}\` cannot be changed: nothing is published against it.`,
        hint: 'Leave this line out.',
      };
    }
    // What is not run here may be a rule of the course's own.
    if (known || course.own.leftOut) continue;
    const names = all.filter(({ always }) => !always).map(({ id }) => id);
    const near = nearestName(rule, names);
    yield {
      place,
      message: `There is no rule \`${rule}\`.`,
      hint: near ? `Did you mean \`${near}\`?` : `The rules are ${names.join(', ')}.`,
    };
  }
}
