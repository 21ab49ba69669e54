import addressparser from 'nodemailer/lib/addressparser/index.js';
import { PublishError } from '../publish-error.ts';

/** @throws PublishError for a `--from` or `--to` that names no mailbox. */
export function checkAddresses(what: 'from' | 'to', text: string | undefined): void {
  if (text === undefined) return;
  const found = addressparser(text, { flatten: true });
  const isMailbox = ({ address = '' }) => /^[^\s@<>]+@[^\s@<>]+$/.test(address);
  if (found.length > 0 && found.every(isMailbox)) return;
  throw new PublishError(
    `\`--${what} ${text}\` is no e-mail address`,
    'write it as `coach@club.example`, or as `"A. Coach" <coach@club.example>`',
  );
}
