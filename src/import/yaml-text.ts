/** A text as YAML: as it is where nothing in it can mean anything there, else as JSON writes it, which is YAML too. */
export function yamlText(text: string): string {
  const isPlain = /^\p{L}[\p{L}\p{M}\p{N} .,;()…!?+='’–-]*$/u.test(text) && !text.endsWith(' ');
  const isMoves = /^\d+\.{1,3} ?[\p{L}\p{N} .()!?+=#$-]*$/u.test(text) && !/\s#|\s$/.test(text);
  const isWord = /^(?:true|false|null|yes|no|on|off|y|n)$/i.test(text);
  return (isPlain || isMoves) && !isWord ? text : JSON.stringify(text);
}
