import { deskFolder, deskTokenHeader } from '../../contract/desk.ts';
import { ownData, siteRoot } from './own-data.ts';

export class Refused extends Error {
  /** HTTP status; 0 without an answer. */
  readonly status: number;
  /** The part of what was asked for that has to change, where the server names one. */
  readonly about: string | undefined;

  constructor(message: string, status: number, about?: string) {
    super(message);
    this.status = status;
    this.about = about;
  }
}

/**
 * Asks the `dev` that served the page, by a route of `dev`.
 * @throws Refused
 */
export async function askServer(route: string, what: unknown): Promise<unknown> {
  const response = await fetch(siteRoot + deskFolder + route, {
    method: 'POST',
    headers: { 'content-type': 'application/json', [deskTokenHeader]: ownData.token ?? '' },
    body: JSON.stringify(what),
  }).catch(() => {
    throw new Refused(
      '`linewright dev` does not answer. Start it again, then load this page anew.',
      0,
    );
  });
  if (!response.headers.get('content-type')?.startsWith('application/json')) {
    throw new Refused(await response.text(), response.status);
  }
  const answer: unknown = await response.json();
  if (response.ok) return answer;
  const { error, about } = answer as { readonly error: string; readonly about?: string };
  throw new Refused(error, response.status, about);
}
