import {
  type CompletionItem,
  CompletionItemKind,
  InsertTextFormat,
  MarkupKind,
} from 'vscode-languageserver-protocol';
import type { Asked } from '../asked.ts';

export { CompletionItemKind };

export interface Offer {
  readonly label: string;
  readonly kind: CompletionItemKind;
  /** What is written, if that is not the label; in it `$0` is where the cursor goes. */
  readonly text?: string;
  /** What stands beside it in the list. */
  readonly detail?: string | undefined;
  readonly words?: string | undefined;
  /** Those with a lower one come first; 5 unless given. */
  readonly rank?: number;
}

/** Offers that take the place of what is typed already: from an offset to the cursor, on one line. */
export interface Offers {
  readonly start: number;
  readonly offers: readonly Offer[];
}

export function toItems(
  { start, offers }: Offers,
  offset: number,
  { open, session }: Asked,
): CompletionItem[] {
  const range = session.places.toRange(open, start, offset);
  const takesSnippets =
    session.capabilities.textDocument?.completion?.completionItem?.snippetSupport === true;
  return offers.map((offer, index): CompletionItem => {
    const { label, kind, text = label, detail, words, rank = 5 } = offer;
    const isSnippet = takesSnippets && text.includes('$0');
    return {
      label,
      kind,
      ...(detail === undefined ? {} : { detail }),
      ...(words === undefined
        ? {}
        : { documentation: { kind: MarkupKind.Markdown, value: words } }),
      sortText: `${rank}${String(index).padStart(4, '0')}`,
      // What is typed is compared with this: it begins as what the range holds.
      filterText: label,
      ...(isSnippet && { insertTextFormat: InsertTextFormat.Snippet }),
      textEdit: {
        range,
        newText: isSnippet ? escapeSnippet(text) : text.replace('$0', ''),
      },
    };
  });
}

function escapeSnippet(text: string): string {
  return text.replace(/[\\}]/g, '\\$&');
}
