import {
  ErrorCodes,
  LSPErrorCodes,
  Message,
  type MessageStrategy,
  type ResponseMessage,
} from 'vscode-languageserver-protocol';

/** Where a session stands, as the protocol has it. */
export type Stage = 'new' | 'running' | 'shut down';

/**
 * Lets through what the stage of a session allows: nothing but `initialize` before it, nothing but `exit` behind
 * `shutdown`. A request that comes at the wrong time is answered with an error, a notification is dropped.
 */
export function createGate(answer: (response: ResponseMessage) => void) {
  let stage: Stage = 'new';
  const strategy: MessageStrategy = {
    handleMessage(message, next) {
      if (Message.isRequest(message)) {
        const fault = faultOf(stage, message.method);
        if (fault) {
          answer({ jsonrpc: '2.0', id: message.id, error: fault });
          return;
        }
        if (message.method === 'initialize') stage = 'running';
        if (message.method === 'shutdown') stage = 'shut down';
      } else if (Message.isNotification(message)) {
        if (stage !== 'running' && message.method !== 'exit') return;
      }
      return next(message);
    },
  };
  return { strategy, stage: (): Stage => stage };
}

function faultOf(stage: Stage, method: string) {
  const isFirst = method === 'initialize';
  if (stage === 'new' && !isFirst) {
    return { code: ErrorCodes.ServerNotInitialized, message: 'Send `initialize` first.' };
  }
  if (stage === 'running' && isFirst) {
    return { code: ErrorCodes.InvalidRequest, message: 'The session has begun already.' };
  }
  if (stage === 'shut down') {
    return { code: ErrorCodes.InvalidRequest, message: 'The session is shut down.' };
  }
  return undefined;
}

/** Answers a request that is cancelled while it waits. */
export const cancelling = {
  cancelUndispatched(message: Message): ResponseMessage | undefined {
    if (!Message.isRequest(message)) return undefined;
    const error = { code: LSPErrorCodes.RequestCancelled, message: 'Cancelled.' };
    return { jsonrpc: '2.0', id: message.id, error };
  },
};
