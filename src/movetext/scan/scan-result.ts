const resultForm = /(?:1[-‐‑–−]0|0[-‐‑–−]1|1\/2[-‐‑–−]1\/2|½[-‐‑–−]½|1\/2|½)(?![\p{L}\p{N}/])/uy;

/** The result of a game that stands at `at`, in the spelling of the PGN standard, and where it ends. */
export function scanResult(text: string, at: number): { result: string; end: number } | undefined {
  resultForm.lastIndex = at;
  if (!resultForm.test(text)) return undefined;
  const end = resultForm.lastIndex;
  return { result: nameResult(text.slice(at, end)), end };
}

function nameResult(written: string): string {
  const draw = written.startsWith('½') || written.startsWith('1/2');
  return draw ? '1/2-1/2' : `${written.charAt(0)}-${written.charAt(2)}`;
}
