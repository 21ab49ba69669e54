import type { PlainTag } from '../../movetext/index.ts';

/** The value of a tag; empty where it is missing. */
export function tagValue(tags: readonly PlainTag[], name: string): string {
  return tags.find((tag) => tag.name === name)?.value ?? '';
}

/** A value that stands in several tags: `Attributes`, `Attributes2`. */
export function joinedTags(tags: readonly PlainTag[], name: string): string {
  let value = tagValue(tags, name);
  for (let at = 2; ; at++) {
    const more = tagValue(tags, `${name}${at}`);
    if (more === '') return value;
    value += more;
  }
}
