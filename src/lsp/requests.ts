import {
  type CancellationToken,
  CodeActionRequest,
  CompletionRequest,
  DefinitionRequest,
  DocumentRangeFormattingRequest,
  DocumentSymbolRequest,
  ErrorCodes,
  FoldingRangeRequest,
  HoverRequest,
  PrepareRenameRequest,
  type ProtocolConnection,
  ReferencesRequest,
  RenameRequest,
  ResponseError,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver-protocol';
import { actions } from './answers/actions.ts';
import { definition, references } from './answers/definition.ts';
import { folding } from './answers/folding.ts';
import { formatRange } from './answers/format.ts';
import { hover } from './answers/hover.ts';
import { prepareRename, rename } from './answers/rename.ts';
import { symbols } from './answers/symbols.ts';
import { tokens } from './answers/tokens.ts';
import { type Asked, takeUp } from './asked.ts';
import { complete } from './complete/index.ts';
import { explain, type Session } from './session.ts';

interface AboutText {
  readonly textDocument: { readonly uri: string };
}

export function registerRequests(
  connection: ProtocolConnection,
  session: Session,
  log: (text: string, isFault?: boolean) => void,
): void {
  /** An answer, or null for a text of no course. What is our fault is logged with its stack. */
  const about =
    <Params extends AboutText, Answer>(answer: (asked: Asked, params: Params) => Answer) =>
    async (params: Params, token: CancellationToken): Promise<Answer | null> => {
      try {
        const asked = await takeUp(session, params.textDocument.uri, token);
        return asked ? answer(asked, params) : null;
      } catch (error) {
        if (error instanceof ResponseError) throw error;
        log(explain(error), true);
        const message = error instanceof Error ? error.message : String(error);
        throw new ResponseError(ErrorCodes.InternalError, message);
      }
    };

  connection.onRequest(
    CompletionRequest.type,
    about((asked, { position }) => complete(asked, position)),
  );
  connection.onRequest(
    HoverRequest.type,
    about((asked, { position }) => hover(asked, position)),
  );
  connection.onRequest(
    DefinitionRequest.type,
    about((asked, { position }) => definition(asked, position)),
  );
  connection.onRequest(
    ReferencesRequest.type,
    about((asked, { position, context }) =>
      references(asked, position, { withDeclaration: context.includeDeclaration }),
    ),
  );
  connection.onRequest(
    PrepareRenameRequest.type,
    about((asked, { position }) => prepareRename(asked, position)),
  );
  connection.onRequest(
    RenameRequest.type,
    about((asked, { position, newName }) => rename(asked, position, newName)),
  );
  connection.onRequest(DocumentSymbolRequest.type, about(symbols));
  connection.onRequest(FoldingRangeRequest.type, about(folding));
  // An editor takes no answer of nothing here.
  const noTokens = { data: [] };
  const allTokens = about((asked) => tokens(asked));
  connection.onRequest(
    SemanticTokensRequest.type,
    async (params, token) => (await allTokens(params, token)) ?? noTokens,
  );
  const someTokens = about(
    (asked, { range }: AboutText & { range: Parameters<typeof tokens>[1] }) => tokens(asked, range),
  );
  connection.onRequest(
    SemanticTokensRangeRequest.type,
    async (params, token) => (await someTokens(params, token)) ?? noTokens,
  );
  connection.onRequest(
    CodeActionRequest.type,
    about((asked, { range, context }) => actions(asked, range, context)),
  );
  connection.onRequest(
    DocumentRangeFormattingRequest.type,
    about((asked, { range }) => formatRange(asked, range)),
  );
}
