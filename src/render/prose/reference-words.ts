import type { Nodes } from 'mdast';
import { toString as plainText } from 'mdast-util-to-string';
import type { DirectiveNode } from '../../model/index.ts';
import type { Strings } from '../../strings/index.ts';

/** What stands around the position that `:same[…]` or `:later[…]` names. */
export interface ReferenceWords {
  readonly before: string;
  readonly after: string;
}

/**
 * The words of `:same[…]` and `:later[…]`: a sentence of its own, a part of the author's sentence, or else in
 * brackets.
 * @param among its siblings.
 */
export function referenceWords(
  node: DirectiveNode,
  among: readonly Nodes[],
  strings: Strings,
): ReferenceWords {
  const at = among.indexOf(node);
  const said = plainText(among.slice(0, Math.max(0, at))).trimEnd();
  const next = plainText(among.slice(at + 1)).trimStart();
  const isSame = node.name === 'same';
  if (said === '' || endsSentence(said)) {
    // A lower-case letter or punctuation continues the sentence.
    const goesOn = /^[\p{Ll}.,;:!?…)\]–—-]/u.test(next);
    const words = isSame ? strings.sameAs('') : strings.comesLater;
    return { before: capital(words), after: goesOn ? '' : '.' };
  }
  const [word = ''] = /[\p{L}\p{N}+#)\]"”»’]+$/u.exec(said) ?? [];
  if (isSame) return { before: strings.sameAs(word.toLowerCase()), after: '' };
  return word === ''
    ? { before: strings.comesLater, after: '' }
    : { before: `(${strings.comesLater}`, after: ')' };
}

/** Whether the text before ends a sentence. */
export function endsSentence(said: string): boolean {
  return /[.!?…][)\]"”“»’]*$/.test(said.trimEnd());
}

function capital(words: string): string {
  const [first = ''] = words;
  return first.toUpperCase() + words.slice(first.length);
}
