export interface DragEvents {
  /** The pointer has strayed from where it went down: whether that is a drag. */
  readonly onStart: (target: EventTarget | null) => boolean;
  /** How far it is from there, in pixels. */
  readonly onMove: (dx: number, dy: number, event: PointerEvent) => void;
  /** `event` is where it was let go; absent where the browser took the pointer away. */
  readonly onEnd: (event: PointerEvent | undefined) => void;
}

/** Pixels that a pointer may stray in a tap. */
const strayInTap = 6;

/** Follows pointers from an element. Suppresses the click after a drag. */
export function listenForDrags(element: HTMLElement, { onStart, onMove, onEnd }: DragEvents): void {
  let dragged = false;
  element.addEventListener(
    'click',
    (event) => {
      if (dragged) event.stopImmediatePropagation();
      dragged = false;
    },
    { capture: true },
  );
  element.addEventListener('pointerdown', (down) => {
    dragged = false;
    if (!down.isPrimary || down.button !== 0) return;
    let moving = false;
    const heard = new AbortController();
    const options = { signal: heard.signal };
    const move = (event: PointerEvent) => {
      if (!event.isPrimary) return;
      const [dx, dy] = [event.clientX - down.clientX, event.clientY - down.clientY];
      if (!moving) {
        if (Math.hypot(dx, dy) < strayInTap) return;
        if (!onStart(down.target)) {
          heard.abort();
          return;
        }
        moving = true;
        element.setPointerCapture(event.pointerId);
      }
      onMove(dx, dy, event);
    };
    const end = (event: PointerEvent) => {
      if (!event.isPrimary) return;
      heard.abort();
      if (!moving) return;
      dragged = true;
      onEnd(event.type === 'pointerup' ? event : undefined);
    };
    addEventListener('pointermove', move, options);
    addEventListener('pointerup', end, options);
    addEventListener('pointercancel', end, options);
  });
}
