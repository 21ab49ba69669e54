import { z } from 'zod';
import { jsonOutputs } from './json-outputs.ts';

/** The part of JSON Schema that our schemas use. */
interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly type?: string;
  readonly description?: string;
  readonly const?: string | number;
  readonly enum?: readonly string[];
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
}

/** The handbook's page of JSON output: every field, its type and what it means. */
export function makeJsonPage(): string {
  const parts = new Map<string, Schema>();
  const outputs = Object.values(jsonOutputs).map(({ command, schema }) => {
    const { $defs = {}, ...root } = z.toJSONSchema(schema) as Schema;
    for (const [id, part] of Object.entries($defs)) parts.set(id, part);
    return `## \`${command}\`\n\n${fieldsOf(root)}`;
  });
  const sections = [...parts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(
      ([id, part]) =>
        `## ${id[0]?.toUpperCase()}${id.slice(1)}\n\n${part.description}\n\n${formsOf(part)}`,
    );
  return `---
title: Output for programs
summary: Everything that commands print as JSON, field by field.
id: json
---

<!-- Made by scripts/make-handbook-pages.ts from scripts/handbook/json-outputs.ts. Do not edit. -->

Commands that take \`--format json\` print one JSON document (RFC 8259) in UTF-8 and nothing else; what is for people
goes to the error output. Each begins with \`version\`. The number grows when a field goes, gets another name or means
something else. A new field does not raise it: pass over what you do not know. A field with a question mark may be
absent.

Findings come in other forms as well, for code hosts: see [Checking](06-checking.md#for-programs).

${[...outputs, ...sections].join('\n\n')}
`;
}

/** One table, or one a form where there are several. */
function formsOf({ oneOf, ...schema }: Schema): string {
  return oneOf === undefined ? fieldsOf(schema) : oneOf.map(fieldsOf).join('\n\nor\n\n');
}

function fieldsOf({ properties = {}, required = [] }: Schema): string {
  const rows = Object.entries(properties).map(([name, field]) => {
    const mark = required.includes(name) ? '' : '?';
    return `| \`${name}\`${mark} | ${typeOf(field)} | ${field.description ?? ''} |`;
  });
  return `| field | type | meaning |\n| --- | --- | --- |\n${rows.join('\n')}`;
}

function typeOf(field: Schema): string {
  const { $ref, type, items, enum: values, const: value } = field;
  if ($ref !== undefined) {
    const id = decodeURIComponent($ref.replace('#/$defs/', ''));
    return `[${id}](#${id.replaceAll(' ', '-')})`;
  }
  if (items) return `list of ${typeOf(items)}`;
  if (value !== undefined) return `\`${JSON.stringify(value)}\``;
  if (values) return values.map((each) => `\`${JSON.stringify(each)}\``).join(', ');
  return type === 'integer' ? 'whole number' : (type ?? '');
}
