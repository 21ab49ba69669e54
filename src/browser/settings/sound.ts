/** How long after an act of the reader's a move may come that is the answer to it, in ms. */
const answerTime = 1500;

/** Frequency of a wooden knock, in Hz, and how long it rings, in seconds. */
const pitch = 190;
const ring = 0.09;

/**
 * Lets a move be heard, if the reader wants that: whenever pieces come to stand elsewhere after a key or a click. A
 * board that follows the text while one scrolls is silent.
 */
export function hearMoves(): void {
  let acted = Number.NEGATIVE_INFINITY;
  for (const act of ['keydown', 'pointerup'] as const) {
    addEventListener(act, () => (acted = performance.now()), { capture: true, passive: true });
  }
  new MutationObserver((changes) => {
    const { sound } = document.documentElement.dataset;
    if (sound !== 'on' || performance.now() - acted > answerTime) return;
    if (changes.some(isMove)) knock();
  }).observe(document.body, { childList: true, subtree: true });
}

/** One piece or, for castling and what is promoted, two; a whole board that is set up is no move. */
function isMove({ target, addedNodes }: MutationRecord): boolean {
  return (
    target instanceof Element &&
    target.classList.contains('pieces') &&
    addedNodes.length > 0 &&
    addedNodes.length < 3
  );
}

let context: AudioContext | undefined;

/** A short knock, made here: no file is asked for. */
function knock(): void {
  context ??= new AudioContext();
  const { currentTime: now } = context;
  const tone = context.createOscillator();
  const volume = context.createGain();
  tone.type = 'triangle';
  tone.frequency.setValueAtTime(pitch * 2, now);
  tone.frequency.exponentialRampToValueAtTime(pitch, now + 0.02);
  volume.gain.setValueAtTime(0.4, now);
  volume.gain.exponentialRampToValueAtTime(0.001, now + ring);
  tone.connect(volume).connect(context.destination);
  tone.start(now);
  tone.stop(now + ring);
}
