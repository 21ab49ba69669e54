import type { Place } from '../../diagnostics/index.ts';
import type { Block, Chapter, Statement } from '../../model/index.ts';
import { treesOf } from '../../model/index.ts';
import { isClaimFault, parseClaim } from '../claims/index.ts';
import { placesIn } from './claims-of.ts';

/** The names of positions that a chapter's claims speak of, such as `quiet` in `material +1 since quiet`. */
export function namesInClaims(
  chapter: Chapter,
): { readonly name: string; readonly place: Place }[] {
  return chapter.blocks.flatMap(statementsOf).flatMap((statement) => {
    const claim = parseClaim(statement.argument);
    if (isClaimFault(claim)) return [];
    const placeOf = placesIn(statement);
    return claim.parts.flatMap(({ labels }) =>
      labels.map(({ text, offset }) => ({ name: text, place: placeOf(offset, text.length) })),
    );
  });
}

function statementsOf(block: Block): Statement[] {
  const said = treesOf(block)
    .flat()
    .flatMap(({ statements }) => statements.filter(({ name }) => name === 'claim'));
  return block.kind === 'diagram' || block.kind === 'pattern' ? [...said, ...block.claims] : said;
}
