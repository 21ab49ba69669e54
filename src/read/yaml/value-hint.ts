/** Hints for values of YAML that are not what is wanted. */

/** Languages that authors may write out by name; any other tag is accepted as well. */
const languages =
  'en de es fr it pt nl da sv no fi pl cs sk hu ro bg ru uk sr hr el tr ar he hi zh ja ko'.split(
    ' ',
  );

/**
 * A hint that names what is wanted.
 * @param wanted what the value must be, in words, with samples in backticks.
 * @param known the values that there are, where there are few.
 */
export function valueHint(
  key: string,
  written: unknown,
  { wanted, known }: { readonly wanted: string; readonly known: readonly string[] },
): string {
  const meant = meantValue(key, written, wanted.includes('`true`'));
  if (meant !== undefined) return `Did you mean \`${key}: ${meant}\`?`;
  if (wanted.endsWith('behind `- `')) {
    // One name or several, but not a sentence with a comma.
    if (typeof written === 'string' && /^\S+(?:, *\S+)*$/.test(written)) {
      return `Did you mean \`${key}: [${written.split(/, */).join(', ')}]\`?`;
    }
    return `Put each on a line of its own below \`${key}:\`, behind \`- \`.`;
  }
  if (written === null || written === undefined || written === '') {
    return `Write it behind \`${key}: \`, or take the line out.`;
  }
  const sample = known[0] ?? /`([^`\n]+)`/.exec(wanted)?.[1];
  if (sample === undefined || sample.includes(': ')) return `Write ${wanted} behind \`${key}: \`.`;
  return `Write it like this: \`${key}: ${sample}\`.`;
}

function meantValue(key: string, written: unknown, isSwitch: boolean): string | undefined {
  if (typeof written !== 'string') return undefined;
  const word = written.trim().toLowerCase();
  if (isSwitch && /^(?:yes|on|y)$/.test(word)) return 'true';
  if (isSwitch && /^(?:no|off|n)$/.test(word)) return 'false';
  if (key === 'id') {
    const id = word.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
    return id === '' || id.length > 60 || id === word ? undefined : id;
  }
  return key === 'language' ? languageTag(word) : undefined;
}

/** The tag of a language from its English or its own name. */
function languageTag(word: string): string | undefined {
  return languages.find((tag) =>
    ['en', tag].some(
      (language) =>
        new Intl.DisplayNames([language], { type: 'language' }).of(tag)?.toLowerCase() === word,
    ),
  );
}
