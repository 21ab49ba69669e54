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
