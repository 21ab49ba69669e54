const event = 'course-exercise-begin';

/** Has an exercise made live, if the script that does it is loaded. */
export function beginExercise(section: HTMLElement): void {
  section.dispatchEvent(new Event(event, { bubbles: true }));
}

/** Answers for each exercise that is begun; it may be begun more than once. */
export function onExercise(begin: (section: HTMLElement) => void): void {
  addEventListener(event, ({ target }) => {
    if (target instanceof HTMLElement) begin(target);
  });
}
