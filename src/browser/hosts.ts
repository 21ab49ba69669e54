/**
 * Where a course stands in a page: on its own pages everywhere, on those of another site within `.linewright`, of which
 * there may be several.
 */
export function placesOfCourse(): readonly ParentNode[] {
  const hosted = document.querySelectorAll('.linewright');
  return hosted.length > 0 ? [...hosted] : [document];
}

/** What says which course it is. */
export function courseElement(): HTMLElement {
  return document.querySelector<HTMLElement>('[data-course]') ?? document.body;
}

export function chapterText(): HTMLElement | null {
  return placesOfCourse()[0]?.querySelector<HTMLElement>('article') ?? null;
}

/** Whether an element takes all the width that the course has. */
export function fillsRoom(element: Element): boolean {
  const room = element.closest('.linewright');
  const { left, width } = element.getBoundingClientRect();
  if (room === null) return width >= document.documentElement.clientWidth - 1 && left <= 0;
  return width >= room.clientWidth - 1;
}
