import type { ElementContent } from 'hast';
import { type DirectiveName, type DirectiveNode, readJudgement } from '../model/index.ts';
import { positionInWords, type RenderContext } from './context.ts';
import { element, linkTo } from './hast.ts';

export type { DirectiveName };

/** These act on the board or on the check, and print nothing. */
export const silentDirectives: ReadonlySet<DirectiveName> = new Set<DirectiveName>([
  'here',
  'mark',
  'plan',
  'threat',
  'guard',
  'claim',
  'learn',
  'allow',
]);

/** What a directive prints in the text. */
export function renderDirective(
  context: RenderContext,
  { name, argument }: DirectiveNode,
): ElementContent[] {
  const { strings } = context;
  switch (name) {
    case 'same':
      return [
        element('span', { className: ['same'] }, [
          `${strings.sameAs} `,
          ...link(context, argument),
        ]),
      ];
    case 'later':
      return [
        element('span', { className: ['later'] }, [
          `${strings.comesLater} `,
          ...link(context, argument),
        ]),
      ];
    case 'end':
      return argument === ''
        ? []
        : [element('span', { className: ['end'] }, [strings.lineEnds(argument)])];
    case 'option':
      return [element('span', { className: ['option'] }, [strings.alternative(argument)])];
    case 'judge':
      return [element('span', { className: ['judgement'] }, [readJudgement(argument).text])];
    default:
      return [];
  }
}

function link({ course, chapter, strings }: RenderContext, name: string): ElementContent[] {
  const label = course.labels[name];
  if (label === undefined) return [element('span', {}, [name])];
  const words = positionInWords(course, label.ref, strings, chapter.file);
  return [linkTo({ to: 'place', ref: label.ref }, 'position', [words])];
}
