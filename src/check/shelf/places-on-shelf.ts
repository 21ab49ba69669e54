import type { CourseFiles, PlaceOnShelf } from '../../read/index.ts';

/**
 * Where the links of a course into the others of its shelf lead; those that lead nowhere are left out.
 * @param links as `course/label`.
 */
export function placesOnShelf(
  { shelf, translation }: Pick<CourseFiles, 'shelf' | 'translation'>,
  links: Iterable<string>,
): Readonly<Record<string, PlaceOnShelf>> | undefined {
  if (shelf === undefined || shelf === 'none') return undefined;
  // A course in another language stands in a folder of its tag.
  const up = translation ? '../../' : '../';
  const places: Record<string, PlaceOnShelf> = {};
  for (const link of [...links].sort()) {
    const [id = '', label = ''] = link.split('/');
    const course = shelf.courses.get(id);
    if (course === undefined || !Object.hasOwn(course.names, label)) continue;
    const { address, title } = course.names[label] ?? { address: '' };
    const below = `${encodeURIComponent(id)}/${address}`;
    places[link] = {
      course: course.title,
      ...(title !== undefined && { title }),
      ...(shelf.together && { beside: up + below }),
      ...(shelf.site !== undefined && { web: `${shelf.site}/${below}` }),
    };
  }
  return Object.keys(places).length > 0 ? places : undefined;
}
