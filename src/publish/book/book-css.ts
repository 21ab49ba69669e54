/** The style sheet of a book: the reader's own type and colours rule, so it sets neither. */
export const bookCss = `
body { line-height: 1.45; }
h1, h2, h3, h4 { line-height: 1.2; break-after: avoid; page-break-after: avoid; hyphens: none; text-align: start; }
h1 { font-size: 1.6em; margin: 0 0 0.4em; }
h2 { font-size: 1.25em; margin: 1.6em 0 0.5em; }
h3 { font-size: 1.1em; margin: 1.3em 0 0.4em; }
p { margin: 0 0 0.75em; orphans: 2; widows: 2; }
header { margin: 1.5em 0 1.6em; }
.number { margin: 0 0 0.3em; font-variant-caps: small-caps; }
.summary { font-style: italic; }
.moves { margin: 0.9em 0; }
.move { white-space: nowrap; }
.moves > p > .move { font-weight: bold; }
.variations { margin: 0.3em 0 0.7em; padding-inline-start: 1.1em; list-style: none; }
.variations p { margin-bottom: 0.3em; }
.from, .event, .game-exit, .legend, .count, .lead { font-size: 0.92em; }
.game .move, .lead .move { font-weight: normal; }
.players { font-weight: bold; margin-bottom: 0; }
.result { white-space: nowrap; }
figure { margin: 1.1em 0; text-align: center; break-inside: avoid; page-break-inside: avoid; }
figcaption { font-size: 0.92em; margin-top: 0.4em; text-align: center; }
figcaption p { margin-bottom: 0.3em; }
.to-move { font-style: italic; white-space: nowrap; }
img { max-width: 100%; height: auto; }
.board { width: 18em; max-width: 88%; background: #fff; }
.exercise { margin: 1.6em 0; break-inside: avoid; page-break-inside: avoid; }
.exercise-number, .pattern-title, .answers-title { font-weight: bold; margin-bottom: 0.2em; }
.exercise-board { text-align: center; }
.exercise-help { margin-top: 0.6em; }
.fold { font-style: italic; margin-bottom: 0.1em; }
.answers { margin-top: 2em; border-top: 1px solid; padding-top: 0.8em; }
.answers-title { font-size: 1.25em; }
.line-heading { font-style: italic; margin-bottom: 0.2em; }
.places { text-align: start; }
table { border-collapse: collapse; margin: 1em 0; font-size: 0.92em; }
th, td { padding: 0.25em 0.7em 0.25em 0; text-align: start; vertical-align: top; border-bottom: 1px solid; }
.align-right { text-align: right; }
.align-center { text-align: center; }
blockquote { margin: 1em 1.4em; }
pre { white-space: pre-wrap; font-size: 0.88em; }
.footnotes { margin-top: 2em; font-size: 0.92em; }
.footnotes-title { font-size: 1.1em; }
.footnotes aside { margin: 0 0 0.6em; }
.to-answer { font-size: 0.92em; }
.cover { display: block; margin: 0 auto; max-height: 98vh; }
.title-page { margin-top: 18%; text-align: center; }
.title-page h1 { text-align: center; font-size: 1.9em; }
.title-page .summary { margin: 2em 8%; }
.title-page .licence, .title-page .online { font-size: 0.92em; }
nav ol { list-style: none; padding-inline-start: 1em; }
nav > ol { padding-inline-start: 0; }
nav li { margin: 0.35em 0; }
`.trimStart();
