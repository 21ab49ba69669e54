import { isSpace } from './scan-words.ts';

/** The periods after a number, which may stand apart: `1.`, `1...`, `1. ...`, `1 .`, `1…`. */
export function scanPeriods(text: string, from: number): { end: number; dots: number } {
  let end = from;
  let dots = 0;
  for (let ahead = from; ; ahead++) {
    const code = text.charCodeAt(ahead);
    if (code === 46) dots++;
    else if (code === 0x2026) dots += 3;
    else if (isSpace(code)) continue;
    else return { end, dots };
    end = ahead + 1;
  }
}
