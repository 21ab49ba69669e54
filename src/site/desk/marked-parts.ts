import type { PreviewedCourse } from '../../check/index.ts';
import { contextOf, freshParts, type PartMaker, type Parts } from '../../render/index.ts';
import { chapterPage, pagePart } from '../render/chapter-page.ts';
import { deskFindings } from './desk-findings.ts';
import { markFindings, type PlacedFinding } from './mark-findings.ts';

/** Chapters' parts for a preview: as published, with marked findings. */
export function markedParts(
  { course, diagnostics }: PreviewedCourse,
  textOf: (file: string) => string | undefined,
  fileOf?: (file: string) => string,
): Parts {
  const shared = contextOf(course);
  const parts = freshParts(shared);
  const findings = new Map<string, PlacedFinding[]>();
  for (const [index, finding] of deskFindings({ course, diagnostics }, fileOf).entries()) {
    const place = diagnostics[index]?.place;
    if (place === undefined) continue;
    const known = findings.get(place.file);
    if (known) known.push({ finding, place });
    else findings.set(place.file, [{ finding, place }]);
  }
  return {
    of<Part>(maker: PartMaker<Part>, chapter: PreviewedCourse['course']['chapters'][number]): Part {
      const found = findings.get(chapter.file);
      if ((maker as PartMaker<unknown>) !== pagePart || found === undefined) {
        return parts.of(maker, chapter);
      }
      const source = textOf(chapter.file) ?? '';
      return chapterPage({ ...shared, chapter }, (tree) =>
        markFindings(tree, found, { blocks: chapter.blocks, source }),
      ) as Part;
    },
  };
}
