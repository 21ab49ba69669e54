import { existsSync } from 'node:fs';
import path from 'node:path';
import { type ExtensionContext, window, workspace } from 'vscode';
import { type Executable, LanguageClient, TransportKind } from 'vscode-languageclient/node';

let client: LanguageClient | undefined;

/** Starts the server for the courses of the window, and again when the setting that names it changes. */
export async function activate(context: ExtensionContext): Promise<void> {
  context.subscriptions.push(
    workspace.onDidChangeConfiguration(async (change) => {
      if (!change.affectsConfiguration('linewright.program')) return;
      await client?.stop();
      await start();
    }),
  );
  await start();
}

export function deactivate(): Promise<void> | undefined {
  return client?.stop();
}

async function start(): Promise<void> {
  client = new LanguageClient('linewright', 'Linewright', serverOf(), {
    documentSelector: [
      { scheme: 'file', language: 'markdown', pattern: '**/{chapters,pages,news}/*.md' },
      { scheme: 'file', pattern: '**/course.yaml' },
    ],
  });
  try {
    await client.start();
  } catch {
    void window.showErrorMessage(
      'Linewright does not start. Install it in this folder with npm, or name its program in the setting “linewright.program”.',
    );
  }
}

/** The program that the setting names; else the one of a folder that is open; else the one on the path. */
function serverOf(): Executable {
  const set = workspace.getConfiguration('linewright').get<string>('program', '').trim();
  const inFolders = (workspace.workspaceFolders ?? [])
    .map(({ uri }) => path.join(uri.fsPath, 'node_modules/linewright/dist/cli/main.js'))
    .filter((file) => existsSync(file));
  const program = set || inFolders[0] || 'linewright';
  const isScript = /\.m?js$/.test(program);
  return {
    command: isScript ? 'node' : program,
    args: [...(isScript ? [program] : []), 'lsp'],
    transport: TransportKind.stdio,
    // On Windows npm makes a script of the command, which only a shell starts.
    ...(process.platform === 'win32' && !isScript ? { options: { shell: true } } : {}),
  };
}
