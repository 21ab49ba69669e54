/**
 * The elements of SVG that only draw, name and move things, of SVG 2 and the older editions that
 * programs still write. Not among them are those that run scripts or bring in other documents: by
 * SVG 2, `script`, `foreignObject` and the elements of HTML (`audio`, `canvas`, `iframe`, `video`); by
 * SVG Tiny 1.2, `handler`, `listener`, `animation`, `prefetch`. `flow…` are of the draft of SVG 1.2.
 */
export const drawingElements: ReadonlySet<string> = new Set(
  `a altGlyph altGlyphDef altGlyphItem animate animateColor animateMotion animateTransform circle clipPath
  color-profile cursor defs desc discard ellipse feBlend feColorMatrix feComponentTransfer feComposite
  feConvolveMatrix feDiffuseLighting feDisplacementMap feDistantLight feDropShadow feFlood feFuncA feFuncB
  feFuncG feFuncR feGaussianBlur feImage feMerge feMergeNode feMorphology feOffset fePointLight
  feSpecularLighting feSpotLight feTile feTurbulence filter flowDiv flowLine flowPara flowRegion
  flowRegionBreak flowRegionExclude flowRoot flowSpan flowTref font font-face font-face-format font-face-name
  font-face-src font-face-uri g glyph glyphRef hkern image line linearGradient marker mask metadata
  missing-glyph mpath path pattern polygon polyline radialGradient rect set solidColor stop style svg switch
  symbol tbreak text textArea textPath title tref tspan unknown use view vkern`.split(/\s+/),
);
