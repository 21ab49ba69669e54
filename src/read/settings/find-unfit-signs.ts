import { nearestName, type Place } from '../../diagnostics/index.ts';
import type { FilesBeside } from '../files-beside.ts';
import type { CourseProblem, CourseSettings } from '../types.ts';

/** The file types allowed for each picture that identifies the course. */
const kinds = {
  logo: ['.svg', '.png', '.webp', '.avif', '.jpg', '.jpeg', '.gif'],
  icon: ['.svg', '.png'],
  // The types that sites read for link previews (common practice, no source).
  card: ['.png', '.jpg', '.jpeg'],
} as const;

/** Reports a logo, icon or card that is missing or is no picture that can be shown. */
export function findUnfitSigns(
  { logo, icon, card }: CourseSettings,
  places: Readonly<Record<string, Place>>,
  { media, unfit }: Pick<FilesBeside, 'media' | 'unfit'>,
): CourseProblem[] {
  const named = [
    ...Object.entries(logo ?? {}).map(([on, file]) => ['logo', file, `logo.${on}`] as const),
    ...(icon === undefined ? [] : [['icon', icon, 'icon'] as const]),
    ...(card === undefined ? [] : [['card', card, 'card'] as const]),
  ];
  return named.flatMap(([setting, file, key]): CourseProblem[] => {
    const place = places[key] ?? places[setting];
    if (place === undefined) return [];
    const fault = unfit.get(file);
    if (fault) return [{ rule: 'media-unfit', place, ...fault }];
    const problem = (message: string, hint: string): CourseProblem[] => [
      { rule: 'course-setting', place, message, hint },
    ];
    if (!media.has(file)) {
      const near = nearestName(file, media);
      return problem(
        `\`${setting}\` names \`${file}\`, and there is no such file in the media/ folder of the course.`,
        near
          ? `Did you mean \`${near}\`?`
          : 'Put the picture into media/ and name it as `media/…`.',
      );
    }
    const all: readonly string[] = kinds[setting];
    if (all.some((kind) => file.toLowerCase().endsWith(kind))) return [];
    return problem(
      `\`${file}\` cannot be the ${setting} of a course.`,
      `It may be a picture of these kinds: ${all.join(', ')}.`,
    );
  });
}
