/** Remembers the answer to each text: few are asked about, and each a hundred thousand times. */
export function remembered<Answer>(answer: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  return (text) => {
    const found = known.get(text) ?? answer(text);
    known.set(text, found);
    return found;
  };
}
