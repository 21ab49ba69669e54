import { nearestName } from '../../diagnostics/index.ts';
import type { Allowance } from '../allowances.ts';
import { defineCourseRule } from '../course-rule.ts';

export const allowUnused = defineCourseRule({
  id: 'allow-unused',
  severity: 'error',
  always: true,
  finds: 'An exception that excepts nothing.',
  documentation: `
\`:allow[rule-id reason]\`, in a comment or in the text, switches a rule off for the findings that begin
on its line; the reason is for whoever reads the source. When the finding is gone the exception must go
too, else it would hide the next one. Exceptions from what an engine says may stay, since its results are
not kept wherever a course is checked. Rules without which a course cannot be published cannot be
switched off.
`,
  examples: [
    {
      title: 'Nothing to allow',
      course: '```moves\n1. e4 e5 {:allow[move-suffix we know]}\n```',
      side: 'both',
      findings: [
        {
          at: '2:11-2:38',
          message: 'On this line there is no finding of `move-suffix` to allow.',
          hint: 'Take the exception out.',
        },
      ],
    },
    {
      title: 'Whether an engine has a finding here is not known everywhere',
      course: '```moves\n1. e4 e5 {:allow[engine-sign we know]}\n```',
      findings: [],
    },
    {
      title: 'A rule that does not exist',
      course: '```moves\n1. e4 e5 {:allow[move-sufix we know]}\n```',
      side: 'both',
      findings: [
        {
          at: '2:18-2:28',
          message: 'There is no rule `move-sufix`.',
          hint: 'Did you mean `move-suffix`?',
        },
      ],
    },
    {
      title: 'A rule that cannot be switched off',
      course: '```moves\n1. e5 {:allow[move-illegal please]}\n```',
      side: 'both',
      findings: [
        {
          at: '2:15-2:27',
          message: '`move-illegal` cannot be switched off.',
          hint: 'Mend what it finds.',
        },
      ],
    },
    {
      title: 'An exception that is needed',
      course:
        '```moves\n1. e4 e5 2. Qh5 Nc6 3. Qxf7 {:allow[move-suffix as the player wrote it]}\n```',
      side: 'both',
      findings: [],
    },
  ],
  // The check itself finds these: only it knows what the other rules have found.
});

/** What to say of an allowance that covered nothing. */
export function describeUnused(
  { rule, place, rulePlace }: Allowance,
  rules: readonly { readonly id: string; readonly always?: boolean }[],
) {
  const known = rules.find(({ id }) => id === rule);
  if (!known) {
    const near = nearestName(
      rule,
      rules.map(({ id }) => id),
    );
    return {
      place: rulePlace,
      message: `There is no rule \`${rule}\`.`,
      hint: near ? `Did you mean \`${near}\`?` : 'Write the id that the finding shows.',
    };
  }
  if (known.always) {
    return {
      place: rulePlace,
      message: `\`${rule}\` cannot be switched off.`,
      hint: 'Mend what it finds.',
    };
  }
  return {
    place,
    message: `On this line there is no finding of \`${rule}\` to allow.`,
    hint: 'Take the exception out.',
  };
}
