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

/** @throws PublishError for an address at which nobody can leave a list. */
export function checkUnsubscribe(address: string | undefined, oneClick = false): void {
  if (address === undefined && oneClick) {
    throw new PublishError(
      '`--one-click` needs an address',
      'give it with `--unsubscribe https://…`, and only if it takes a POST without more questions',
    );
  }
  if (address === undefined) return;
  const protocol = URL.canParse(address) ? new URL(address).protocol : '';
  if (protocol === 'https:' || (protocol === 'mailto:' && !oneClick)) return;
  throw new PublishError(
    `\`--unsubscribe ${address}\` is no address at which a reader can leave the list`,
    oneClick
      ? 'a button of one click needs an address that begins with https:'
      : 'write an address that begins with https: or mailto:, as in `mailto:coach@club.example?subject=Leave`',
  );
}
