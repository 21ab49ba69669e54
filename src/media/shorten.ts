/** An address as a message quotes it. */
export function shorten(address: string): string {
  return address.length > 60 ? `${address.slice(0, 60)}…` : address;
}
