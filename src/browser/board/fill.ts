/** Fills the gaps of a sentence: `{move} can be played.` */
export function fill(sentence: string, parts: Readonly<Record<string, string>>): string {
  return sentence.replace(/\{(\w+)\}/g, (gap, name: string) => parts[name] ?? gap);
}
