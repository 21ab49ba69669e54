import path from 'node:path/posix';
import { createSuggester } from '../../diagnostics/index.ts';

/** The names of a course's files. All chapters pass the same object, which is a key of the cache below. */
type Names = ReadonlySet<string> | ReadonlyMap<string, unknown>;

type Suggester = ReturnType<typeof createSuggester>;

const suggesters = new WeakMap<Names, Map<string, Suggester>>();

/** The suggester for a spelling of file names, made once. */
function suggesterOf(names: Names, form: string, make: () => Iterable<string>): Suggester {
  const forms = suggesters.get(names) ?? new Map<string, Suggester>();
  suggesters.set(names, forms);
  const suggest = forms.get(form) ?? createSuggester(make());
  forms.set(form, suggest);
  return suggest;
}

/** Suggests a file by its path from the course folder. */
export function suggestFile(names: Names, file: string): string | undefined {
  return suggesterOf(names, 'path', () => names.keys())(file);
}

/** Suggests a file by its base name. */
export function suggestBasename(names: Names, file: string): string | undefined {
  return suggesterOf(names, 'basename', () =>
    [...names.keys()].map((known) => path.basename(known)),
  )(path.basename(file));
}

/**
 * Suggests a file as a link in `chapter` would name it: by its base name if it is in the same folder, else by its
 * path.
 */
export function suggestTarget(
  chapter: string,
  { chapters, media }: { readonly chapters: Names; readonly media: Names },
  file: string,
): string | undefined {
  const folder = path.dirname(chapter);
  const suggest = suggesterOf(chapters, folder, () =>
    [...chapters.keys(), ...media.keys()].map((known) =>
      path.dirname(known) === folder ? path.basename(known) : known,
    ),
  );
  const near = suggest(file);
  // Nobody links to the chapter itself.
  return near === path.basename(chapter) ? undefined : near;
}
