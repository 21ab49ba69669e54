import {
  type ClientCapabilities,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver-protocol';
import { actionKinds } from './answers/actions.ts';
import { tokenLegend } from './answers/tokens.ts';
import { completionTriggers } from './complete/index.ts';
import type { Encoding } from './open-text.ts';

export function capabilitiesFor(
  { textDocument, general }: ClientCapabilities,
  encoding: Encoding,
): ServerCapabilities {
  return {
    ...(general?.positionEncodings && { positionEncoding: encoding }),
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: true },
    completionProvider: { triggerCharacters: completionTriggers },
    hoverProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    renameProvider:
      textDocument?.rename?.prepareSupport === true ? { prepareProvider: true } : true,
    documentSymbolProvider: true,
    foldingRangeProvider: true,
    documentRangeFormattingProvider: true,
    codeActionProvider:
      textDocument?.codeAction?.codeActionLiteralSupport === undefined
        ? false
        : { codeActionKinds: actionKinds },
    semanticTokensProvider: { legend: tokenLegend, full: true, range: true },
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
}
