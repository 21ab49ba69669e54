/** SVG files for tests. The active ones call `ran()` or ask for `/fetched` where a browser lets them. */
const svg = (inside: string, attributes = '') =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inside}</svg>`;
const html = 'xmlns="http://www.w3.org/1999/xhtml"';
const dot =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

/**
 * By what is active in them. The ways are those of SVG 2 (chapter "Scripting and Interactivity",
 * "Linking", "Embedded Content"), SVG Animations 2, SVG Tiny 1.2, "Associating Style Sheets with XML"
 * and XML 1.0 (entities); how they are hidden is common practice, no source.
 */
export const activeSvgs: Readonly<Record<string, string>> = {
  script: svg('<script>ran()</script>'),
  'script in CDATA': svg('<script><![CDATA[ran()]]></script>'),
  'script from a file': svg('<script href="/fetched"/>'),
  'script by XLink': svg('<script xlink:href="/fetched"/>'),
  'script by a prefix': svg('<s:script xmlns:s="http://www.w3.org/2000/svg">ran()</s:script>'),
  'script by a default namespace within another': svg(
    '<g xmlns="urn:x"><script xmlns="http://www.w3.org/2000/svg">ran()</script></g>',
  ),
  'script in metadata': svg('<metadata><script>ran()</script></metadata>'),
  'script in a pattern that nothing uses': svg(
    '<defs><pattern><script>ran()</script></pattern></defs>',
  ),
  'script of HTML': svg(`<h:script xmlns:h="http://www.w3.org/1999/xhtml">ran()</h:script>`),
  'picture of HTML': svg(`<img ${html} src="/fetched" onerror="ran()"/>`),
  'frame of HTML': svg(`<iframe ${html} src="javascript:parent.ran()"/>`),
  'style sheet of HTML': svg(`<link ${html} rel="stylesheet" href="/fetched"/>`),
  'foreign object': svg(
    `<foreignObject><body ${html}><script>ran()</script></body></foreignObject>`,
  ),
  'foreign object without HTML': svg('<foreignObject/>'),
  'frame of SVG': svg('<iframe src="/fetched"/>'),
  'MathML link': svg('<math xmlns="http://www.w3.org/1998/Math/MathML" href="javascript:ran()"/>'),
  onload: svg('', 'onload="ran()"'),
  'onload in capitals, which XML does not know': svg('', 'ONLOAD="ran()"'),
  onbegin: svg('<animate attributeName="x" dur="1s" begin="0s" onbegin="ran()"/>'),
  onfocus: svg('<a href="#a" id="a" onfocus="ran()"/>'),
  'handler by references': svg('', 'onload="&#114;an()"'),
  'handler on an element of nobody': svg('<x xmlns="urn:x" onclick="ran()"/>'),
  'javascript: in a link': svg('<a href="javascript:ran()"><text y="20">x</text></a>'),
  'javascript: by XLink': svg('<a xlink:href="javascript:ran()"/>'),
  'javascript: by references': svg('<a href="&#x6A;avascript:ran()"/>'),
  'javascript: with a tab in it': svg('<a href="java&#9;script:ran()"/>'),
  'javascript: behind a space': svg('<a href=" &#1;javascript:ran()"/>'.replace('&#1;', '&#10;')),
  'javascript: by another prefix': svg(
    '<a y:href="javascript:ran()" xmlns:y="http://www.w3.org/1999/xlink"/>',
  ),
  'data: page in a link': svg('<a href="data:text/html,&lt;script>ran()&lt;/script>"/>'),
  'animated address': svg(
    '<a><animate attributeName="href" to="javascript:ran()" fill="freeze"/><text y="20">x</text></a>',
  ),
  'set address': svg('<a><set attributeName="xlink:href" to="javascript:ran()"/></a>'),
  'set by another prefix': svg(
    '<a><set xmlns:q="http://www.w3.org/1999/xlink" attributeName="q:href" to="javascript:ran()"/></a>',
  ),
  'set handler': svg('<set attributeName="onclick" to="ran()"/>'),
  'picture from elsewhere': svg(
    '<image href="http://fetched.localhost/fetched" width="9" height="9"/>',
  ),
  'picture of the same host': svg('<image xlink:href="/fetched" width="9" height="9"/>'),
  'picture by a relative address': svg('<image href="fetched" width="9" height="9"/>'),
  'picture without a scheme': svg('<image href="//fetched.localhost/x" width="9" height="9"/>'),
  'SVG in an address': svg('<image href="data:image/svg+xml,&lt;svg/>" width="9" height="9"/>'),
  'use from elsewhere': svg('<use href="/fetched#a"/>'),
  'use of an address': svg('<use href="data:image/svg+xml;base64,PHN2Zy8+#a"/>'),
  'gradient from elsewhere': svg(
    '<linearGradient id="g" href="/fetched#g"/><rect fill="url(#g)" width="9" height="9"/>',
  ),
  'filter picture': svg(
    '<filter id="f"><feImage href="/fetched"/></filter><rect filter="url(#f)" width="9" height="9"/>',
  ),
  'fill from elsewhere': svg('<rect fill="url(/fetched#a)" width="9" height="9"/>'),
  'filter from elsewhere': svg('<rect filter="url(/fetched#a)" width="9" height="9"/>'),
  'animated fill from elsewhere': svg(
    '<rect width="9" height="9"><set attributeName="filter" to="url(/fetched#a)"/></rect>',
  ),
  'style from elsewhere': svg(
    '<rect style="mask:url(&quot;/fetched&quot;)" width="9" height="9"/>',
  ),
  'style with escapes': svg('<rect style="mask:u\\72l(/fetched)" width="9" height="9"/>'),
  'style with a comment': svg('<rect style="mask:/**/url(/**/fetched)" width="9" height="9"/>'),
  'set of pictures': svg(
    '<rect style="mask-image:image-set(&quot;/fetched&quot; 1x)" width="9" height="9"/>',
  ),
  '@import': svg('<style>@import "/fetched";</style>'),
  '@import in capitals and CDATA': svg('<style><![CDATA[@IMPORT url(/fetched);]]></style>'),
  '@import with escapes': svg('<style>@\\69mport "/fetched";</style>'),
  'font from elsewhere': svg(
    '<style>@font-face{font-family:f;src:url(/fetched)}text{font-family:f}</style><text y="20">x</text>',
  ),
  'background of the root': svg('<style>:root{background:url(/fetched)}</style>'),
  'cursor from elsewhere': svg('<cursor xlink:href="/fetched"/>'),
  'base for addresses': svg('<use href="#a"/>', 'xml:base="http://fetched.localhost/"'),
  'message on a click': svg('<a href="#a" ping="/fetched"/>'),
  'style sheet instruction': `<?xml-stylesheet href="/fetched" type="text/css"?>${svg('')}`,
  'transformation instruction': `<?xml-stylesheet href="/fetched" type="text/xsl"?>${svg('')}`,
  entity: `<!DOCTYPE svg [<!ENTITY s "&#60;script>ran()&#60;/script>">]>${svg('&s;')}`,
  'external entity': `<!DOCTYPE svg [<!ENTITY s SYSTEM "/fetched">]>${svg('&s;')}`,
  'entities in entities': `<!DOCTYPE svg [<!ENTITY a "x"><!ENTITY b "&a;&a;">]>${svg('&b;')}`,
  'attribute of the DOCTYPE': `<!DOCTYPE svg [<!ATTLIST svg onload CDATA "ran()">]>${svg('')}`,
  'handler of SVG Tiny': svg(
    '<handler xmlns:ev="http://www.w3.org/2001/xml-events" ev:event="load">ran()</handler>',
  ),
  'another encoding': `<?xml version="1.0" encoding="ISO-2022-JP"?>${svg('')}`,
  'a page that is called a picture': `<html ${html}><script>ran()</script></html>`,
  'a page that is no XML': '<!doctype html><script>ran()</script>',
  'a picture without a namespace': '<svg><rect/></svg>',
  'a script before an error': svg('<script>ran()</script><p'),
};

/** By what is in them; programs that draw write such files. */
export const plainSvgs: Readonly<Record<string, string>> = {
  nothing: '<svg xmlns="http://www.w3.org/2000/svg"/>',
  'a byte order mark': `\uFEFF${svg('')}`,
  'shapes, gradients, a mask, a use': svg(
    '<defs><linearGradient id="g"><stop offset="0" stop-color="red"/></linearGradient>' +
      '<linearGradient id="h" xlink:href="#g"/><mask id="m"><rect width="9" height="9"/></mask></defs>' +
      '<rect id="r" fill="url(#h)" mask="url(\'#m\')" style="filter:url(#f);stroke:red" width="9" height="9"/>' +
      '<use href="#r" transform="translate(9 0) rotate(calc(4))"/>',
  ),
  'text and style': svg(
    '<style>text { font: 9px serif; fill: url(#g) }</style><text y="9">1. d4 (d5) url(x)</text>',
  ),
  'an animation': svg(
    '<circle r="4"><animate attributeName="r" values="4;9;4" dur="2s"/></circle>',
  ),
  'a link': svg(
    '<a href="https://example.org/"><text y="9">x</text></a><a href="chapter.html#x"/><a href="mailto:a@example.org"/>',
  ),
  'a picture of dots in itself': svg(`<image xlink:href="${dot}" width="9" height="9"/>`),
  'a font in itself': svg(
    '<style>@font-face{font-family:f;src:url(data:font/woff2;base64,AAAA) format("woff2")}</style>',
  ),
  'the DOCTYPE of SVG 1.1': `<?xml version="1.0" encoding="utf-8" standalone="no"?>
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
${svg('<g/>', 'version="1.1"')}`,
  'an old encoding and only ASCII': `<?xml version="1.0" encoding="iso-8859-1"?>${svg('<title>Plan</title>')}`,
  'notes of a drawing program': svg(
    `<n:namedview xmlns:n="urn:drawing-program" n:zoom="1.4" n:file="/home/a/plan.svg"/><metadata>
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#" xmlns:dc="http://purl.org/dc/elements/1.1/">
<rdf:Description rdf:about="" dc:format="image/svg+xml"><dc:type rdf:resource="http://purl.org/dc/dcmitype/StillImage"/></rdf:Description>
</rdf:RDF></metadata><g style="-program-font:'Serif'" xml:space="preserve"/>`,
  ),
  'a comment with a script in it': svg('<!-- <script>ran()</script> -->'),
  'words that look like a script': svg('<text>&lt;script&gt;ran()&lt;/script&gt;</text>'),
};
