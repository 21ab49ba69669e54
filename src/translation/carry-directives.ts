import { directiveNames } from '../read/index.ts';

const directive = new RegExp(`\\s?:(?:${directiveNames.join('|')})\\[[^\\]]*\\]`, 'g');

/** Words of whom they are a part: a title and a reason are no matter of the board. */
const nameOf = (written: string) =>
  written
    .trim()
    .replace(/\s*["“„].*/s, '')
    .replace(/\]$/, '');

/** A translated text with the directives that its original has now: others go, new ones stand at the end. */
export function carryDirectives(original: string, translated: string): string {
  const wanted = [...original.matchAll(directive)].map(([written]) => written);
  const left = wanted.map(nameOf);
  const kept = translated.replace(directive, (written) => {
    const at = left.indexOf(nameOf(written));
    // A note of the translator's own.
    if (at < 0) return written.trim().startsWith(':todo[') ? written : '';
    left.splice(at, 1);
    return written;
  });
  const missing = wanted.filter((written) => {
    const at = left.indexOf(nameOf(written));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  return [kept.trimEnd(), ...missing.map((written) => written.trim())].join(' ');
}
