import type { PhrasingContent } from 'mdast';
import type { TextDirective } from 'mdast-util-directive';
import { nearestName } from '../../diagnostics/index.ts';
import { isLearnWord, learnHint } from '../blocks/learn.ts';
import { noteLetters, wordsInSan } from '../moves/in-san.ts';
import { arrowProblem, isLabel, labelHint, squareProblem } from '../names.ts';
import { type DirectiveName, type DirectiveNode, directiveNames, type Range } from '../nodes.ts';
import { placeOf, positionOf, type TextContext } from '../text-context.ts';
import { readHere } from './read-here.ts';
import { readJudgement } from './read-judgement.ts';

/** A line end within a text, with what the container puts before the next line. */
const nextLine = /(?:\r\n|\r|\n)[ \t>]*/g;

/**
 * Reads a text directive. Only the bracket form counts: others, such as `White:Black` and `10:30`, become text again.
 */
export function readDirective(
  node: TextDirective,
  context: TextContext,
): DirectiveNode | PhrasingContent {
  const place = placeOf(node, context);
  const raw =
    node.data?.written ??
    context.source.text.slice(place.start.offset, place.end.offset).replace(nextLine, '\n');
  const asText: PhrasingContent = { type: 'text', value: raw, ...positionOf(node) };
  const opening = 1 + node.name.length;
  const name = directiveNames.find((known) => known === node.name);
  if (raw.charAt(opening) !== '[') {
    const before = context.source.text.charAt(place.start.offset - 1);
    if (name && !/[\p{L}\p{N}]/u.test(before)) {
      context.report({
        place,
        message: `\`:${name}\` has no brackets, so it is only a word.`,
        hint: `Write \`:${name}[…]\`, without a space before the bracket. For a plain colon write \`\\:\`.`,
      });
    }
    return asText;
  }
  if (!name) {
    const near = nearestName(node.name, directiveNames);
    context.report({
      place,
      message: `There is no directive \`:${node.name}[…]\`.`,
      hint: near
        ? `Did you mean \`:${near}[…]\`? For a plain colon write \`\\:\`.`
        : `The directives are ${directiveNames.map((known) => `:${known}`).join(', ')}. For a plain colon write \`\\:\`.`,
    });
    return asText;
  }
  if (!raw.endsWith(']')) {
    context.report({
      place,
      message: `\`:${name}[…]\` takes nothing in braces.`,
      hint: 'Leave the braces out; what a directive says stands in its brackets.',
    });
    return { ...asText, value: '' };
  }
  const written = raw.slice(opening + 1, -1);
  const oneLine = written.replace(/\s+/g, ' ').trim();
  const argument = name === 'claim' ? wordsInSan(oneLine, context.pieces) : oneLine;
  if (name === 'here')
    return readName(node, written, opening + 1, context) ?? { ...asText, value: '' };
  const first = place.start.offset + opening + 1;
  const argumentRange = rangeOfWords(first, place.end.offset - 1, context);
  const problem = argumentProblem(name, argument);
  if (problem) {
    const { message, hint } = problem;
    const range = argument === '' ? place : argumentRange;
    const wrong = 'wrong' in problem ? rangeOfItem(problem.wrong, range, context) : undefined;
    context.report({ place: { ...place, ...(wrong ?? range) }, message, hint });
    return { ...asText, value: '' };
  }
  const { pointAt, text } = context.source;
  if (name === 'claim') {
    noteLetters(text.slice(first, place.end.offset - 1), (at) => pointAt(first + at), context);
  }
  return {
    type: 'courseDirective',
    name,
    argument,
    argumentRange,
    id: context.nextId(),
    ...positionOf(node),
  };
}

/** The range between two offsets of the file, without surrounding white space. */
function rangeOfWords(from: number, to: number, { source }: TextContext): Range {
  const inner = source.text.slice(from, to);
  const start = from + inner.length - inner.trimStart().length;
  return {
    start: source.pointAt(start),
    end: source.pointAt(Math.max(start, from + inner.trimEnd().length)),
  };
}

/** The range of a list item within the directive's argument. */
function rangeOfItem(
  item: string | undefined,
  { start, end }: Range,
  { source }: TextContext,
): Range | undefined {
  const items = source.text.slice(start.offset, end.offset).matchAll(/[^\s,]+/g);
  for (const { 0: each, index } of items) {
    if (each !== item) continue;
    const at = start.offset + index;
    return { start: source.pointAt(at), end: source.pointAt(at + each.length) };
  }
  return undefined;
}

/**
 * Reads `:here[name "title"]`; undefined where it gives no name. An unusable title is reported, and the name holds.
 * @param opening offset in the directive of what its brackets contain.
 */
function readName(
  node: TextDirective,
  written: string,
  opening: number,
  context: TextContext,
): DirectiveNode | undefined {
  const place = placeOf(node, context);
  const { pointAt, text } = context.source;
  const first = place.start.offset + opening;
  const read = readHere(written);
  if (!('label' in read)) {
    const words = rangeOfWords(first, place.end.offset - 1, context);
    context.report({ place: { ...place, ...(written.trim() !== '' && words) }, ...read });
    return undefined;
  }
  const { label, title, problem } = read;
  if (problem) context.report({ place, ...problem });
  // Over two lines of a list or a quote, the file has more characters than the argument.
  const asWritten = text.slice(first, place.end.offset - 1) === written;
  const range = (start: number, end: number) => ({
    start: pointAt(first + start),
    end: pointAt(first + end),
  });
  const whole = { start: pointAt(first), end: pointAt(place.end.offset - 1) };
  const start = written.indexOf(label);
  return {
    type: 'courseDirective',
    name: 'here',
    argument: label,
    argumentRange: asWritten ? range(start, start + label.length) : whole,
    ...(title && {
      title: title.text,
      titleRange: asWritten ? range(title.start, title.end) : whole,
    }),
    id: context.nextId(),
    ...positionOf(node),
  };
}

function argumentProblem(name: Exclude<DirectiveName, 'here'>, argument: string) {
  switch (name) {
    case 'same':
    case 'later':
      return isLabel(argument)
        ? undefined
        : { message: `\`${argument}\` is no name for a position.`, hint: labelHint };
    case 'mark':
      return squareProblem(argument);
    case 'plan':
    case 'threat':
    case 'guard':
      return arrowProblem(argument);
    case 'claim':
      return argument === ''
        ? {
            message: 'This claim says nothing.',
            hint: 'Write what is claimed, such as `:claim[isolated d5]`.',
          }
        : undefined;
    case 'judge':
      return readJudgement(argument).text === ''
        ? {
            message: 'This judgement says nothing.',
            hint: 'Write what you judge, with a date before it if you like: `:judge[2026-11-01 The knight is better than the bishop.]`.',
          }
        : undefined;
    case 'todo':
      return argument === ''
        ? {
            message: '`:todo[]` does not say what is left to do.',
            hint: 'Write it between the brackets: `:todo[what about 9.Qc2?]`.',
          }
        : undefined;
    case 'allow':
      return /^[a-z-]+ \S/.test(argument)
        ? undefined
        : {
            message: '`:allow[…]` needs the id of a rule and a reason.',
            hint: 'Write `:allow[rule-id the reason]` on the line of the finding.',
          };
    case 'learn':
      return isLearnWord(argument)
        ? undefined
        : {
            message: `\`${argument}\` does not say what practice asks.`,
            hint: learnHint(argument),
          };
    case 'end':
      return argument === ''
        ? {
            message: '`:end[]` gives no reason.',
            hint: 'Say why in a few words: `:end[…]`.',
          }
        : undefined;
    // That it is an alternative says enough.
    case 'option':
      return undefined;
  }
}
