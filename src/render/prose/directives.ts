import type { ElementContent } from 'hast';
import type { Nodes } from 'mdast';
import { toString as plainText } from 'mdast-util-to-string';
import { type DirectiveName, type DirectiveNode, readJudgement } from '../../model/index.ts';
import type { Strings } from '../../strings/index.ts';
import { namedInWords, type RenderContext } from '../context.ts';
import { element, linkTo } from '../hast.ts';
import { endsSentence, referenceWords } from './reference-words.ts';

export type { DirectiveName };

/** Directives that act on the board or on the check, and print nothing. */
export const silentDirectives: ReadonlySet<DirectiveName> = new Set<DirectiveName>([
  'here',
  'mark',
  'plan',
  'threat',
  'guard',
  'claim',
  'learn',
  'todo',
  'allow',
]);

/**
 * What a directive prints in the text.
 * @param among its siblings.
 */
export function renderDirective(
  context: RenderContext,
  node: DirectiveNode,
  among: readonly Nodes[],
): ElementContent[] {
  const { name, argument } = node;
  const { strings } = context;
  switch (name) {
    case 'same':
    case 'later': {
      const { before, after } = referenceWords(node, among, strings);
      const words = [`${before} `, ...link(context, argument), ...(after === '' ? [] : [after])];
      return [element('span', { className: [name] }, words)];
    }
    case 'end':
      return argument === ''
        ? []
        : [element('span', { className: ['end'] }, [endWords(node, among, strings)])];
    case 'option':
      return [element('span', { className: ['option'] }, [strings.alternative(argument)])];
    case 'judge':
      return [element('span', { className: ['judgement'] }, [readJudgement(argument).text])];
    default:
      return [];
  }
}

/** Why a line ends: after a dash, unless a whole sentence comes before. */
function endWords(node: DirectiveNode, among: readonly Nodes[], strings: Strings): string {
  const said = plainText(among.slice(0, Math.max(0, among.indexOf(node))));
  return endsSentence(said) ? `(${node.argument})` : strings.lineEnds(node.argument);
}

function link({ ask, chapter, strings }: RenderContext, name: string): ElementContent[] {
  const named = ask('label', name);
  if (named === null) return [element('span', {}, [name])];
  const words = namedInWords(ask, named, strings, chapter.file);
  return [linkTo({ to: 'place', ref: named.ref }, 'position', [words])];
}
