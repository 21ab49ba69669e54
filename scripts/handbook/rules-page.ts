import type { CourseRule } from '../../src/check/index.ts';
import { rules } from '../../src/check/index.ts';
import { exampleChapter, filesOfExample, runExample } from '../../src/check/testing/run-example.ts';
import { type Example, reportText } from '../../src/diagnostics/index.ts';

/** The handbook's page of rules: what each finds, why, and its examples with what is told. */
export function makeRulesPage(): string {
  const sections = rules.map(makeSection);
  return `---
title: The rules
summary: Everything the checker finds, with an example of each finding.
id: rules
---

<!-- Made by scripts/make-handbook-pages.ts from src/check/rules. Do not edit: edit the rule. -->

Each rule has an id, which stands in its findings and in the \`rules\` of \`course.yaml\`. An *error* stops
the build, a *warning* does not. The examples are the checker's own tests.

| rule | finds |
| --- | --- |
${rules.map(makeRow).join('\n')}

${sections.join('\n\n')}
`;
}

function makeRow({ id, finds }: CourseRule): string {
  return `| [\`${id}\`](#${id}) | ${finds} |`;
}

function makeSection(rule: CourseRule): string {
  const changed = rule.always
    ? 'It cannot be changed or switched off.'
    : 'It can be set to `error`, `warning` or `off`.';
  return `## \`${rule.id}\`

**${rule.finds}** By default ${rule.severity === 'error' ? 'an error' : 'a warning'}. ${changed}

${rule.documentation.trim()}

${rule.examples.map((example) => makeExample(example, rule)).join('\n\n')}`;
}

function makeExample(example: Example, rule: CourseRule): string {
  const files = filesOfExample(example);
  const own =
    typeof example.course === 'string'
      ? [{ path: '', text: example.course }]
      : files.filter(({ path }) => path in Object(example.course));
  const shown = own
    .map(({ path, text }) => `${path === '' ? '' : `\`${path}\`:\n\n`}${fence(text, 'text')}`)
    .join('\n\n');
  const engine = Object.entries(example.engine ?? {}).map(([where, lines]) => `${where}: ${lines}`);
  const said =
    engine.length === 0
      ? ''
      : `\n\nThe engine says, for the side to move:\n\n${fence(engine.join('\n'), 'text')}`;
  const side = example.side && example.side !== 'white' ? ` (\`side: ${example.side}\`)` : '';
  const found = runExample(files, rule.id);
  if (found.length === 0)
    return `### ${example.title}${side}\n\nNothing is found:\n\n${shown}${said}`;
  const report = reportText(found, {
    textOf: (file) => files.find(({ path }) => path === file)?.text,
    color: false,
  });
  const told = report
    .slice(0, report.lastIndexOf('\n\n'))
    .replaceAll(new RegExp(`(?<!/)${exampleChapter}:`, 'g'), 'line ');
  const fixed =
    example.fixed === undefined
      ? ''
      : `\n\nAfter \`linewright check --fix\`:\n\n${fence(example.fixed, 'text')}`;
  return `### ${example.title}${side}\n\n${shown}${said}\n\n${said === '' ? '' : 'Then the check tells:\n\n'}${fence(told, 'text')}${fixed}`;
}

/** Longer than any fence inside. */
function fence(text: string, language: string): string {
  return `\`\`\`\`\`${language}\n${text.replace(/\n$/, '')}\n\`\`\`\`\``;
}
