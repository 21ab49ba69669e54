/** A sentence about a number, in the forms that its language has for numbers; `{n}` is the number. */
export type Counted = Partial<Readonly<Record<Intl.LDMLPluralRule, string>>> & {
  readonly other: string;
};

/** The form of a sentence for a number, with the number in the figures of the language. */
export function counted(sentence: Counted, n: number, language: string): string {
  const form = sentence[new Intl.PluralRules(language).select(n)] ?? sentence.other;
  return fill(form, { n: new Intl.NumberFormat(language).format(n) });
}

/** Fills the gaps of a sentence: `{move} can be played.` */
export function fill(sentence: string, parts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (gap, name: string) => parts[name] ?? gap);
}

/** Joins sentences, some of which may have no stop of their own, as titles; what is empty is left out. */
export function joinSentences(...parts: readonly (string | undefined)[]): string {
  const said = parts.flatMap((part) => part || []);
  return said.map((part, at) => (at < said.length - 1 ? withStop(part) : part)).join(' ');
}

/** A sentence with its stop: a title gets one, unless it ends in a mark of its own. */
export function withStop(sentence: string): string {
  return /[.!?…。！？][”’»“"')\]]*$/u.test(sentence) ? sentence : `${sentence}.`;
}
