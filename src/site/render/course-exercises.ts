import type { Element } from 'hast';
import { type CourseExercise, type CourseExercises, pageWords } from '../../contract/index.ts';
import type { Chapter, Course } from '../../model/index.ts';
import {
  type Addresses,
  assignAddresses,
  chapterDocument,
  elementsIn,
  type PartMaker,
  type Parts,
  pageMedium,
  resolveAll,
  writeHtml,
} from '../../render/index.ts';
import type { Strings } from '../../strings/index.ts';
import type { SiteFile } from '../site-data.ts';
import { exercisesScript } from './data-scripts.ts';

type ExercisePart = readonly Omit<CourseExercise, 'chapter'>[];

/** The exercises of a chapter, as its page has them, for another page. */
export const exercisePart: PartMaker<ExercisePart> = {
  kind: 'practice-exercises',
  inputs: '',
  make(context) {
    const { ask, chapter, strings } = context;
    if (!chapter.blocks.some(({ kind }) => kind === 'exercise')) return [];
    const medium = pageMedium(assignAddresses(ask));
    const sections = [...elementsIn(chapterDocument(context))].filter(
      ({ data }) => data?.role === 'exercise',
    );
    return sections.map((section) => ({
      key: keyOf(section),
      html: writeHtml(resolveAll([section], medium, strings)),
    }));
  },
};

function keyOf({ properties }: Element): string {
  return String(properties.dataP ?? '');
}

interface Given {
  readonly addresses: Addresses;
  readonly parts: Parts;
  readonly strings: Strings;
}

/** The script with the exercises of a course; none where it has none, or nothing is practised. */
export function exerciseFiles(
  course: Course,
  isPractised: boolean,
  given: Given,
): readonly SiteFile[] {
  if (!isPractised) return [];
  const exercises = makeCourseExercises(course.chapters, given);
  return exercises.exercises.length === 0 ? [] : [exercisesScript(exercises)];
}

function makeCourseExercises(
  chapters: readonly Chapter[],
  { addresses, parts, strings }: Given,
): CourseExercises {
  const exercises = chapters.flatMap((chapter, index) =>
    parts.of(exercisePart, chapter).map((exercise) => ({ chapter: index, ...exercise })),
  );
  const titles = chapters.map(({ file, title }) => [addresses.page(file), title] as const);
  return { format: 1, words: pageWords('chapter', strings, Object.fromEntries(titles)), exercises };
}
