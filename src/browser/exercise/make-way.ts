/** While an exercise is in sight, the page's own board gives way to it where it lies above the text. */
export function makeWay(): (exerciseBoard: Element) => void {
  const inSight = new Set<Element>();
  const observer = new IntersectionObserver(
    (entries) => {
      for (const { target, isIntersecting } of entries) {
        if (isIntersecting) inSight.add(target);
        else inSight.delete(target);
      }
      document.documentElement.classList.toggle('at-exercise', inSight.size > 0);
    },
    { threshold: 0.3 },
  );
  return (board) => observer.observe(board);
}
