import { createHash } from 'node:crypto';
import addressparser from 'nodemailer/lib/addressparser/index.js';
import MailComposer from 'nodemailer/lib/mail-composer/index.js';

export interface MessageParts {
  readonly subject: string;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly unsubscribe?: Unsubscribe | undefined;
  readonly date: Date;
  readonly text: string;
  /** Names its attached pictures as `cid:` and `contentIdOf` of their paths. */
  readonly html: string;
  /** Files by their paths; none where the pictures are fetched. */
  readonly pictures: ReadonlyMap<string, { readonly type: string; readonly bytes: Uint8Array }>;
}

export interface Unsubscribe {
  /** An https or mailto address (RFC 2369, 3.2). */
  readonly address: string;
  /** Whether a mail program's own button may send it a POST (RFC 8058): few addresses take that. */
  readonly takesPost: boolean;
}

/** The Content-ID that a picture has in a message (RFC 2392), by its path. */
export function contentIdOf(path: string): string {
  return `${path.replace(/^.*\//, '')}@linewright.invalid`;
}

/**
 * A message that can be sent as it is, or opened in a mail program: plain text, HTML and pictures
 * (RFC 2046 multipart/alternative, RFC 2387 multipart/related). The same parts give the same bytes.
 */
export function makeMessage(parts: MessageParts): Promise<Buffer> {
  const { subject, from, to, date, text, html, pictures, unsubscribe } = parts;
  // Two messages of one name are one message to mail programs: all that they say goes in.
  const hash = createHash('sha256').update(JSON.stringify([subject, from, to, date, text, html]));
  for (const [path, { bytes }] of pictures)
    hash.update(`\n${path} ${bytes.length}\n`).update(bytes);
  const id = hash.digest('hex').slice(0, 32);
  const composer = new MailComposer({
    ...(from !== undefined && { from }),
    ...(to !== undefined && { to }),
    subject,
    date,
    // Else the name of this computer would stand in it (RFC 5322, 3.6.4).
    messageId: `<${id}@${domainOf(from) ?? 'linewright.invalid'}>`,
    // Some programs open a message as one to be sent if it says so (common practice, no source).
    headers: { 'X-Unsent': '1', ...listHeaders(unsubscribe) },
    // RFC 5322, 2.3: lines end with CRLF and nothing else.
    newline: '\r\n',
    text,
    html,
    textEncoding: 'quoted-printable',
    attachments: [...pictures].map(([path, { type, bytes }]) => ({
      cid: contentIdOf(path),
      filename: path.replace(/^.*\//, ''),
      content: Buffer.from(bytes),
      contentType: type,
      contentDisposition: 'inline',
    })),
    ...{ baseBoundary: id },
  });
  return composer.compile().build();
}

function domainOf(from: string | undefined): string | undefined {
  const [sender] = from === undefined ? [] : addressparser(from, { flatten: true });
  const domain = sender?.address?.split('@').at(-1)?.toLowerCase();
  // Others than these would have to be written in another form there.
  return domain !== undefined && /^[a-z0-9.-]+$/.test(domain) ? domain : undefined;
}

function listHeaders(unsubscribe: Unsubscribe | undefined): Record<string, string> {
  if (unsubscribe === undefined) return {};
  const { address, takesPost } = unsubscribe;
  return {
    'List-Unsubscribe': `<${address}>`,
    ...(takesPost && { 'List-Unsubscribe-Post': 'List-Unsubscribe=One-Click' }),
  };
}
