/**
 * Whether a host is the reader's own machine, as the addresses of previews name it. There many
 * courses follow one another at one address, and what the server has now comes before what is kept.
 */
export function isLocalHost(hostname: string): boolean {
  return ['localhost', '127.0.0.1', '[::1]'].includes(hostname);
}
