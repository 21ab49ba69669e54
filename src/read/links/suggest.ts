import path from 'node:path/posix';
import { createSuggester } from '../../diagnostics/index.ts';

/** The names of a course's files; the same object for all chapters. */
type Names = ReadonlySet<string> | ReadonlyMap<string, unknown>;

type Suggester = ReturnType<typeof createSuggester>;

const suggesters = new WeakMap<Names, Map<string, Suggester>>();

/** What suggests one of a course's files, made once for each way in which they are written. */
function suggesterOf(names: Names, form: string, make: () => Iterable<string>): Suggester {
  const forms = suggesters.get(names) ?? new Map<string, Suggester>();
  suggesters.set(names, forms);
  const suggest = forms.get(form) ?? createSuggester(make());
  forms.set(form, suggest);
  return suggest;
}

/** A file by its path in the course folder. */
export function suggestFile(names: Names, file: string): string | undefined {
  return suggesterOf(names, 'path', () => names.keys())(file);
}

/** A file by its name without a folder. */
export function suggestBasename(names: Names, file: string): string | undefined {
  return suggesterOf(names, 'basename', () =>
    [...names.keys()].map((known) => path.basename(known)),
  )(path.basename(file));
}

/** A file as a link in `chapter` names it: what lies beside it by its name, else by its path. */
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
  // Nobody means the chapter that he is writing.
  return near === path.basename(chapter) ? undefined : near;
}
