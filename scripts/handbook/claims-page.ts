import { type ClaimExample, type ClaimKind, claimKinds } from '../../src/check/claims/index.ts';

/** The handbook's page of claims: each definition with its source, and positions that test it. */
export function makeClaimsPage(): string {
  return `---
title: The claims
summary: What can be claimed of a position, what exactly it means, and where the meaning comes from.
id: claims
---

<!-- Made by scripts/make-handbook-pages.ts from src/check/claims. Do not edit: edit the claim. -->

A claim stands in a comment or in the text, \`:claim[isolated d5]\`, or under \`claim:\` in a diagram. It is
verified on the board when the course is checked. A claim about something that is not there, such as
\`isolated d5\` where no pawn stands on d5, is false, and so is its denial.

| written | true where |
| --- | --- |
| \`not pinned f3\` | the claim is false, and what it speaks of is there |
| \`pinned f3 and loose e4\` | both are true |
| \`open d or half-open d white\` | at least one is true; \`and\` joins more closely than \`or\` |
| \`after Nf3: pinned f3\` | the claim is true once that move is played |
| \`after Nf3 Bg4: pinned f3 to d1\` | the same after several moves |
| \`after pass Nxe5: fork e5\` | the side to move passes, and the other side plays |

\`after\` speaks for all that follows, up to the end or to another \`after\`, which begins again at the
position shown. Its moves are those of the side to move and the other in turn; where one of them cannot be
played, or a side in check would pass, the claim and its denial are false. In a diagram, whose lines are
YAML, a claim with a colon stands in quotes: \`claim: "after Nf3: pinned f3"\`.

The boards below are checked as any other.

| claim | written |
| --- | --- |
${[...claimKinds].map(makeRow).join('\n')}

${[...claimKinds].map(makeSection).join('\n\n')}
`;
}

function makeRow({ name, usage }: ClaimKind): string {
  const id = name.replaceAll(' ', '-');
  return `| [${name}](#${id}) | ${usage.map((form) => `\`${form}\``).join(', ')} |`;
}

function makeSection({ name, usage, definition, source, examples }: ClaimKind): string {
  const [board, ...others] = [...examples].sort((a, b) => Number(isLive(b)) - Number(isLive(a)));
  const live = board && isLive(board) ? [board] : [];
  const rest = board && !isLive(board) ? [board, ...others] : others;
  return `## \`${name}\`

Written ${usage.map((form) => `\`${form}\``).join(', ')}.

${definition.trim()}

*Source: ${source}.*

${live.map(makeBoard).join('\n\n')}

${makeList(rest)}`.trimEnd();
}

/** True on the bare board, so that the page itself can show and verify it. */
function isLive({ holds, side, covered, moves, labels }: ClaimExample): boolean {
  return holds === true && !side && !covered && !moves && !labels;
}

function makeBoard({ fen, claim, because, note }: ClaimExample): string {
  const why = note ?? (because ? `${because.charAt(0).toUpperCase()}${because.slice(1)}.` : '');
  return `\`\`\`diagram fen="${fen}" view="white"
caption: ${JSON.stringify(`\`${claim}\` is true. ${why}`.trim())}
claim: ${JSON.stringify(claim)}
\`\`\``;
}

const verdicts = { true: 'true', false: 'false', empty: 'false', undecided: 'not decided' };

function makeList(examples: readonly ClaimExample[]): string {
  if (examples.length === 0) return '';
  const lines = examples.map(({ fen, claim, holds, because, note, moves }) => {
    const after = moves ? ` after ${moves.join(' ')}` : '';
    const why = note ?? because;
    return `- \`${claim}\`${after} is ${verdicts[String(holds) as keyof typeof verdicts]}${why ? `: ${why.replace(/\.$/, '')}` : ''}.  \n  \`${fen}\``;
  });
  return lines.join('\n');
}
