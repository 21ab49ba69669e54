import { access } from 'node:fs/promises';
import path from 'node:path';
import sirv from 'sirv';
import { UserError } from '../diagnostics/index.ts';
import { settleOutput } from '../output/index.ts';
import { defaultOutput } from './build-options.ts';
import { command } from './called-as.ts';
import { stdout } from './console.ts';
import { serve } from './serve.ts';

export interface PreviewOptions {
  readonly out?: string;
  readonly port: number;
}

/** `linewright preview`: serves what was built, until it is stopped. */
export async function preview(folder: string, options: PreviewOptions): Promise<void> {
  const out = options.out ?? defaultOutput(folder);
  await settleOutput(out);
  await access(path.join(out, 'index.html')).catch(() => {
    throw new UserError(`${out} holds no built site`, `run \`${command('build', folder)}\` first`);
  });
  const files = sirv(out, { dev: true, dotfiles: false });
  const { address } = await serve((request, response) => {
    files(request, response, () => {
      response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' });
      response.end('There is no such page.\n');
    });
  }, options.port);
  stdout.print`The course is at ${address}\nStop with Ctrl+C.\n`;
}
