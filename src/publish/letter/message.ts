import { createHash } from 'node:crypto';
import MailComposer from 'nodemailer/lib/mail-composer/index.js';

export interface MessageParts {
  readonly subject: string;
  readonly from?: string | undefined;
  readonly to?: string | undefined;
  readonly date: Date;
  readonly text: string;
  /** Names its attached pictures as `cid:` and `contentIdOf` of their paths. */
  readonly html: string;
  /** Files by their paths; none where the pictures are fetched. */
  readonly pictures: ReadonlyMap<string, { readonly type: string; readonly bytes: Uint8Array }>;
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
  const { subject, from, to, date, text, html, pictures } = parts;
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
    // Else the name of this computer would stand in it.
    messageId: `<${id}@linewright.invalid>`,
    // Some programs open a message as one to be sent if it says so (common practice, no source).
    headers: { 'X-Unsent': '1' },
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
