/** `about 3 min left`: assumes that the rest goes at the same pace. Empty at the start. */
export function timeLeft(elapsed: number, done: number, all: number): string {
  if (done === 0) return '';
  const seconds = Math.ceil(((elapsed / done) * (all - done)) / 1000);
  if (seconds < 60) return `about ${seconds} s left`;
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 100) return `about ${minutes} min left`;
  return `about ${Math.ceil(minutes / 60)} h left`;
}
