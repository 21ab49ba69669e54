/** Signs of print that ISO 8859-1 lacks, in its own. */
const stand: Readonly<Record<string, string>> = {
  '‘': "'",
  '’': "'",
  '‚': "'",
  '“': '"',
  '”': '"',
  '„': '"',
  '–': '-',
  '—': '-',
  '…': '...',
  '→': '->',
  '♔': 'K',
  '♕': 'Q',
  '♖': 'R',
  '♗': 'B',
  '♘': 'N',
  '♙': '',
};

/**
 * Text in ISO 8859-1, as section 4.1 of the PGN standard has it: print signs in its own, letters
 * without the accents that it lacks. What still has no sign becomes `?`, and is counted.
 */
export function toLatin1(text: string): { readonly bytes: Uint8Array; readonly lost: number } {
  let lost = 0;
  const inside = text.normalize('NFC').replace(/[^\0-\xFF]/gu, (sign) => {
    const found = stand[sign] ?? sign.normalize('NFKD').replace(/\p{M}/gu, '');
    if (/^[\0-\xFF]*$/.test(found)) return found;
    lost += 1;
    return '?';
  });
  return { bytes: Buffer.from(inside, 'latin1'), lost };
}
