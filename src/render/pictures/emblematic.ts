import type { Position } from '../../chess/index.ts';
import { type Block, type Chapter, mainLine } from '../../model/index.ts';

/** The position that represents a chapter: that of its first diagram, else the end of its first line. */
export function emblematic({ blocks }: Chapter):
  | {
      readonly position: Position;
      readonly block: Block /** Its index there. */;
      readonly node: number;
    }
  | undefined {
  for (const block of blocks) {
    if (block.kind === 'diagram' && block.position !== undefined) {
      return { position: block.position, block, node: 0 };
    }
  }
  const line = blocks.find((block) => block.kind === 'moves');
  const last = line && mainLine(line.nodes).findLast((node) => node.position);
  if (line === undefined || last?.position === undefined) return undefined;
  return { position: last.position, block: line, node: line.nodes.indexOf(last) };
}
