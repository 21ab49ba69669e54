export function svg(name: string, attributes: Readonly<Record<string, string>>): SVGElement {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

/** A bar as long as its share of a whole, the parts of which lie over each other, the longest first. */
export function bar(whole: number, parts: readonly (readonly [className: string, n: number])[]) {
  const drawn = svg('svg', {
    class: 'practice-bar',
    viewBox: '0 0 100 8',
    preserveAspectRatio: 'none',
    'aria-hidden': 'true',
  });
  for (const [name, n] of parts) {
    const width = String((100 * n) / Math.max(1, whole));
    drawn.append(svg('rect', { class: name, width, height: '8' }));
  }
  return drawn;
}
