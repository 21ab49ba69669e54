import type { Diagnostic, Place } from '../diagnostics/index.ts';

/** A translated chapter is read under the original's name, and told under its own. */
export function movedTo(folder: string, place: Place): Place {
  return { ...place, file: `${folder}/${place.file}` };
}

/** Rules that speak of the words of a file; what others find is told of the original. */
const ofWords: ReadonlySet<string> = new Set([
  'chapter-unreadable',
  'claim-unreadable',
  'label-duplicate',
  'label-unknown',
  'link-move',
  'link-unknown',
  'media-unfit',
  'move-ambiguous',
  'move-illegal',
  'move-number',
  'move-unreadable',
  'news-link',
  'prose-move-sign',
  'prose-move-unknown',
  'todo-open',
  'words-false',
]);

/**
 * What a course in another language was found to have, as it is told beside what the original has.
 * @param own the original's names of the files that are translated.
 */
export function findingsInTranslation(
  diagnostics: readonly Diagnostic[],
  folder: string,
  own: ReadonlySet<string>,
): Diagnostic[] {
  const moved = (place: Place) => (own.has(place.file) ? movedTo(folder, place) : place);
  return diagnostics.flatMap(({ place, related, fixes, ...finding }): Diagnostic[] => {
    if (!own.has(place.file) || !ofWords.has(finding.rule)) return [];
    return [
      {
        ...finding,
        place: moved(place),
        ...(related && {
          related: related.map((each) => ({ ...each, place: moved(each.place) })),
        }),
        ...(fixes && { fixes: fixes.map((fix) => ({ ...fix, place: moved(fix.place) })) }),
      },
    ];
  });
}
