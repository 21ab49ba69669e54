import type { Element } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import { chapterIds } from '../../addresses/index.ts';
import { describePosition } from '../../chess/index.ts';
import { dataProperties, positionAddress, withStop } from '../../contract/index.ts';
import type { DiagramBlock, NodeRef } from '../../model/index.ts';
import type { RenderContext } from '../context.ts';
import type { BoardNode, DiagramNumberNode } from '../document.ts';
import { element, linkTo, text } from '../hast.ts';
import { diagramNames, imagePath, pictureOf } from '../pictures/diagram-images.ts';
import { drawnData } from './move-link.ts';
import type { RenderComment } from './moves-block.ts';

/** A diagram: a board with its caption, the side to move, and links to its pictures. */
export function renderDiagram(
  context: RenderContext,
  block: DiagramBlock,
  renderCaption: RenderComment,
): Element | undefined {
  const { chapter, strings } = context;
  const picture = pictureOf(block);
  const name = diagramNames(chapter).get(block.key);
  if (picture === undefined || block.position === undefined || name === undefined) return undefined;

  const written = renderCaption(block.caption);
  const named = block.at && context.ask('label', block.at.name);
  const { title } = named ?? {};
  // The side to move follows, so a title becomes a sentence.
  const words = written.length > 0 || title === undefined ? written : [text(withStop(title))];
  const caption = plainText(block.caption) || (title ?? '');
  const desc = block.alt ?? describePosition(block.position, strings.position);
  const board: BoardNode = { type: 'board', picture: { ...picture, title: caption, desc } };
  const ref = placeInText(context, block);
  const still =
    ref === undefined
      ? element('div', { className: ['still'] }, [board])
      : element(
          'a',
          { className: ['still', 'position-link'], title: strings.showOnBoard },
          [board],
          { role: 'show', target: { to: 'place', ref }, link: 'position' },
        );
  const pictureLink = (scale: 1 | 2, label: string) =>
    linkTo({ to: 'picture', address: imagePath(name, scale) }, 'words', [label], {
      type: 'image/png',
      ariaLabel: `${label}: ${caption || desc}`,
    });
  const number = context.ask('diagramNumber', { chapter: chapter.file, block: block.key });
  const numbered: DiagramNumberNode[] = number === null ? [] : [{ type: 'diagramNumber', number }];
  const id = chapterIds(chapter).ofNode(block, 0);
  const figcaption = element('figcaption', {}, [
    ...numbered,
    ...words,
    ...(words.length > 0 ? [' '] : []),
    element('span', { className: ['to-move'] }, [strings.toMove[picture.turn]], {
      role: 'to-move',
    }),
    ' ',
    element(
      'span',
      { className: ['pictures'] },
      [pictureLink(1, strings.picture), ' ', pictureLink(2, strings.pictureTwice)],
      { role: 'pictures' },
    ),
  ]);
  const { marks, arrows, lastMove, view } = picture;
  const properties = {
    className: ['diagram'],
    id,
    ...dataProperties('diagram', {
      p: positionAddress(block.position.key),
      view,
      last: lastMove && lastMove.from + lastMove.to,
      at:
        ref?.chapter === chapter.file
          ? chapterIds(chapter).ofNode({ key: ref.block }, ref.node)
          : undefined,
      ...drawnData({ marks, arrows }),
    }),
  };
  return element('figure', properties, [still, figcaption], { role: 'diagram' });
}

/** Where the diagram's position occurs in the moves: at its label, else in this chapter. */
function placeInText({ ask, chapter }: RenderContext, block: DiagramBlock): NodeRef | undefined {
  const named = block.at && ask('label', block.at.name);
  if (named) return named.ref;
  const { key } = block.position ?? {};
  return (key !== undefined && ask('placeIn', { key, chapter: chapter.file })) || undefined;
}
