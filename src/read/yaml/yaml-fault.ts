import { type Document, isMap, isScalar, type YAMLError } from 'yaml';

/** What is wrong with invalid YAML, in an author's words, and where (offsets in the text). */
export interface YamlFault {
  /** A clause without a full stop. */
  readonly what: string;
  readonly hint: string;
  readonly start: number;
  readonly end: number;
}

const quotes = 'Put the value in quotes, such as `title: "Moves: a start"`.';

/** A hint with the line in question, if it is short and has no quotes of its own. */
function quotesAt(text: string, offset: number): string {
  const start =
    Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
  const [line] = text.slice(start).split(/[\r\n]/, 1);
  const [, key, value] =
    /^\s*(?:- )?([\p{L}-]+):[ \t]+([^"`]{1,60}?)[ \t]*$/u.exec(line ?? '') ?? [];
  return key && value ? `Put the value in quotes: \`${key}: "${value}"\`.` : quotes;
}

/** Explains the first fault of a text; later ones are mostly its consequences. */
export function explainYaml({ code, message, pos }: YAMLError, document: Document, text: string) {
  const [start] = pos;
  const lineEnd = start + text.slice(start).search(/\r|\n|$/);
  const at = (what: string, hint: string, from = start, to = lineEnd): YamlFault => ({
    what,
    hint,
    start: from,
    end: Math.max(from, to),
  });
  switch (code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return at(
        'a value that contains `: ` looks like another name',
        `${quotesAt(text, start)} Begin every name at the margin.`,
      );
    case 'MULTILINE_IMPLICIT_KEY':
    case 'MISSING_CHAR': {
      const value = lastValue(document);
      if (code === 'MISSING_CHAR' && message.includes('quote') && value !== undefined) {
        return at(
          'a quotation mark is opened and never closed',
          'Close it at the end of the value.',
          value,
          value + 1,
        );
      }
      return at(
        'a line has no `: ` between a name and a value',
        'Write `name: value`, with a space behind the colon.',
      );
    }
    case 'RESOURCE_EXHAUSTION':
      return at('brackets or hyphens lie in one another too often', `Close them. ${quotes}`);
    case 'TAB_AS_INDENT':
      return at('a line is indented with a tab', 'Indent with spaces.', start, start + 1);
    case 'MULTIPLE_DOCS':
      return at(
        'a line `---` begins a second document',
        'Leave that line out.',
        start,
        Math.min(start + 3, lineEnd),
      );
    case 'BAD_SCALAR_START':
      return at(`a value cannot begin with \`${text.charAt(start)}\``, quotesAt(text, start));
    case 'BAD_INDENT':
      return /must .*end with/.test(message)
        ? at('a bracket is opened and never closed', `Close it. ${quotes}`)
        : at(
            'a line is indented otherwise than its neighbours',
            'Begin all names at the margin, and all items of a list in one column.',
          );
    default:
      return at(
        message.charAt(0).toLowerCase() + message.slice(1),
        `Write one \`name: value\` a line. ${quotes}`,
      );
  }
}

/** A name that is given a second time, at an offset. */
export function duplicateKey(text: string, start: number): YamlFault {
  const key = /^[^:\s]+/.exec(text.slice(start))?.[0] ?? '';
  return {
    what: `\`${key}\` is given twice`,
    hint: 'Keep one of the two lines.',
    start,
    end: start + key.length,
  };
}

/** `*word` and `&word` are references in YAML, which no author means. */
export function explainReference(text: string): YamlFault {
  const start = Math.max(0, text.search(/(?<=:\s+|-\s+)[*&]/));
  return {
    what: `a value cannot begin with \`${text.charAt(start)}\``,
    hint: quotesAt(text, start),
    start,
    end: start + text.slice(start).search(/\r|\n|$/),
  };
}

function lastValue(document: Document): number | undefined {
  const pair = isMap(document.contents) ? document.contents.items.at(-1) : undefined;
  return isScalar(pair?.value) ? pair.value.range?.[0] : undefined;
}
