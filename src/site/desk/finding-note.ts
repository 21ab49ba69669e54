import type { Element, ElementContent, Text } from 'hast';
import { type DeskFinding, dataProperties } from '../../contract/index.ts';
import { element, text } from '../../render/index.ts';

declare module 'hast' {
  interface ElementData {
    /** The place in the file of a block that the page could not show. */
    unshown?: number;
  }
}

/** The sign in the text that links to the note; without words, so that the text is read out and copied unchanged. */
export function findingSign({ id, severity }: DeskFinding): Element {
  return element(
    'a',
    {
      className: ['desk-sign', `desk-${severity}`],
      href: `#${id}`,
      ariaLabel: severity === 'error' ? 'Error here' : 'Warning here',
      lang: 'en',
    },
    [],
  );
}

/** The note: what is wrong, what to do, where it is written. */
export function findingNote(finding: DeskFinding): Element {
  const { id, severity, rule, message, hint, file, line, column } = finding;
  return element(
    'div',
    {
      className: ['desk-note', `desk-${severity}`],
      id,
      role: 'note',
      lang: 'en',
      dir: 'ltr',
      tabIndex: -1,
    },
    [
      element('span', { className: ['desk-kind'] }, [
        text(severity === 'error' ? 'Error' : 'Warning'),
      ]),
      text(' '),
      element('span', { className: ['desk-message'] }, withCode(message)),
      ...(hint === undefined
        ? []
        : [text(' '), element('span', { className: ['desk-hint'] }, withCode(hint))]),
      text(' '),
      element('span', { className: ['desk-place'] }, [
        text(`${file}, line ${line} · `),
        element('code', {}, [text(rule)]),
        text(' '),
        element(
          'button',
          {
            type: 'button',
            className: ['desk-open'],
            title: 'Open in the editor',
            ...dataProperties('finding', { file, line, column }),
          },
          [text('Open')],
        ),
      ]),
    ],
  );
}

/** The source of a block that could not be shown. */
export function unshownBlock(source: string, offset: number): Element {
  return {
    ...element('pre', { className: ['desk-unshown'], dir: 'ltr', tabIndex: 0 }, [
      element('code', {}, [text(source)]),
    ]),
    data: { unshown: offset },
  };
}

/** Underlines what a finding is about. */
export function mark(node: Element | Text, { severity }: DeskFinding): void {
  if (node.type !== 'element') return;
  const names = [node.properties.className ?? []].flat().map(String);
  // Copied: the properties may be shared with other media.
  const worst = names.includes('desk-error') ? 'error' : severity;
  const others = names.filter((name) => !name.startsWith('desk-'));
  node.properties = { ...node.properties, className: [...others, 'desk-at', `desk-${worst}`] };
}

/** Words between backquotes as code. */
function withCode(words: string): ElementContent[] {
  return words
    .split('`')
    .map((part, index) => (index % 2 === 1 ? element('code', {}, [text(part)]) : text(part)));
}
