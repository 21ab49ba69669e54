/**
 * Whether an address holds a picture of dots or a font in itself: neither runs anything. An SVG in an
 * address does not count, since it could hold what an SVG file must not.
 */
export function isPassiveData(address: string): boolean {
  return /^data:(?:image\/(?:avif|gif|jpe?g|png|webp)|(?:application|font)\/(?:x-)?(?:font-)?(?:otf|opentype|sfnt|truetype|ttf|woff2?))[;,]/i.test(
    address,
  );
}
