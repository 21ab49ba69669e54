import { type Content, listOf } from '../element.ts';

/** A sentence whose gaps are filled with text or elements: `The course advises {advice}.` */
export function compose(
  sentence: string,
  parts: Readonly<Record<string, Content>>,
): (Node | string)[] {
  return sentence.split(/\{(\w+)\}/).flatMap((piece, index): (Node | string)[] => {
    const part = index % 2 === 0 ? piece : (parts[piece] ?? '');
    return [...listOf(part)].filter((each) => each !== '');
  });
}
