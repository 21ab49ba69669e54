/**
 * The style of paper on the screen: the handout is laid out with it to count its pages (`browser/handout/measure.ts`).
 * Made of the same sheets, so that it cannot differ: whatever holds on paper and not on every screen stands here for
 * `.measuring`.
 */

/** The width of A4 within our margins; that of letter has the same answers. */
const paperWidth = (174 / 25.4) * 96;

/** @param css of all sheets of the handout, in the order of the cascade. */
export function measureSheet(css) {
  const blocks = [];
  for (const { query, body } of mediaBlocks(css)) {
    if (!holdsOnPaper(query)) continue;
    blocks.push(body.replaceAll(/(^|[{},;]\s*)(?::root[^,{]*|html)(?=\s*[,{])/g, '$1&'));
  }
  return `.measuring {\n${blocks.join('\n')}\n}\n`;
}

function* mediaBlocks(css) {
  const bare = css.replaceAll(/\/\*[\s\S]*?\*\//g, '');
  for (const start of bare.matchAll(/@media ([^{]+)\{/g)) {
    const from = start.index + start[0].length;
    let depth = 1;
    let at = from;
    while (depth > 0) {
      if (bare[at] === '{') depth++;
      if (bare[at] === '}') depth--;
      at++;
    }
    yield { query: start[1].trim(), body: bare.slice(from, at - 1) };
  }
}

/** Whether a query holds on a sheet of paper. @throws for one that nobody has thought of here. */
function holdsOnPaper(query) {
  const px = (rem) => Number(rem) * 16;
  const condition = query
    .replaceAll(/\(min-width: ([\d.]+)rem\)/g, (_, rem) => String(paperWidth >= px(rem)))
    .replaceAll(/\(max-width: ([\d.]+)rem\)/g, (_, rem) => String(paperWidth <= px(rem)))
    .replaceAll(/\((?:max|min)-height: [\d.]+(?:rem|px)\)/g, 'false')
    .replaceAll('(orientation: portrait)', 'true')
    .replaceAll(
      /\((?:orientation|pointer|hover|scripting|prefers-[\w-]+|forced-colors): [\w-]+\)/g,
      'false',
    )
    .replaceAll(/\bprint\b/g, 'true')
    .replaceAll(/\bscreen\b/g, 'false')
    .replaceAll(/\band\b/g, '&&')
    .replaceAll(/\bor\b|,/g, '||')
    .replaceAll(/\bnot\b/g, '!');
  if (/[^\s()&|!a-z]/.test(condition) || /[a-z]/.test(condition.replaceAll(/true|false/g, ''))) {
    throw new Error(`scripts/measure-sheet.mjs cannot tell whether this holds on paper: ${query}`);
  }
  return new Function(`return ${condition}`)();
}
