import { createLocator, type Place, type Point } from '../../diagnostics/index.ts';
import { treesOf } from '../queries/walk-chapter.ts';
import type { Course, MoveNode } from '../types.ts';
import { walkText } from '../walk-text.ts';

/**
 * Compares every place in a course with its file: the text there must be what the model says, and line, column and
 * offset must agree. Returns the mismatches.
 */
export function misplaced(course: Course, files: Readonly<Record<string, string>>): string[] {
  const wrong: string[] = [];
  const locators = new Map(
    Object.entries(files).map(([file, text]) => [file, createLocator(text)]),
  );
  const check = (place: Place, what: string, written?: string) => {
    const text = files[place.file] ?? '';
    const locate = locators.get(place.file);
    const agrees = ({ line, column, offset }: Point) => {
      const point = locate?.(offset);
      return point?.line === line && point.column === column && offset <= text.length;
    };
    const { start, end } = place;
    if (!agrees(start) || !agrees(end) || end.offset < start.offset) {
      wrong.push(`${what}: no place of ${place.file}: ${JSON.stringify(place)}`);
    } else if (written !== undefined && text.slice(start.offset, end.offset) !== written) {
      wrong.push(`${what}: ${text.slice(start.offset, end.offset)} instead of ${written}`);
    }
  };
  const checkNode = ({ written, after }: MoveNode) => {
    if (written) {
      check(written.place, 'move', written.san);
      if (written.number) check(written.number.place, 'number', written.number.text);
      for (const glyph of written.glyphs) check(glyph.place, 'glyph', glyph.text);
    }
    for (const item of after) check(item.place, item.type);
  };
  for (const { message, place } of course.problems) check(place, message);
  for (const { name, place } of Object.values(course.labels)) {
    const written = textAt(files, place);
    // A title for readers may follow the name.
    const isTitled = written.startsWith(`:here[${name} `);
    if (!/[\r\n]/.test(written)) check(place, 'label', isTitled ? written : `:here[${name}]`);
  }
  for (const chapter of course.chapters) {
    for (const block of chapter.blocks) {
      check(block.place, 'block');
      for (const node of treesOf(block).flat()) {
        checkNode(node);
        for (const { place } of node.arrows) check(place, 'arrow');
        for (const { place, label } of node.statements) {
          check(place, 'statement');
          if (label) check(label.place, 'label');
        }
      }
    }
    walkText(chapter.body.children, (node) => {
      if (node.type !== 'proseMoves' || !node.position) return;
      const { start, end } = node.position;
      const text = files[chapter.file]?.slice(start.offset, end.offset) ?? '';
      if (!text.startsWith('`')) wrong.push(`prose moves: ${text}`);
    });
  }
  return wrong;
}

function textAt(files: Readonly<Record<string, string>>, { file, start, end }: Place): string {
  return (files[file] ?? '').slice(start.offset, end.offset);
}
