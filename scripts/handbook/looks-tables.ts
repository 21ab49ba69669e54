import { type Group, groups, type Property, parts, properties } from '../../src/look/index.ts';

const titles: Readonly<Record<Group, string>> = {
  pages: 'Colours of pages',
  cover: 'Colours of the cover',
  boards: 'Colours of boards',
  type: 'Type',
  shape: 'Measures',
};

/** The tables of the chapter on looks, by the name that stands in its comments. */
export const looksTables: Readonly<Record<string, string>> = {
  properties: groups.map(tableOf).join('\n\n'),
  parts: [
    '| part | what it is |',
    '| --- | --- |',
    ...parts.map(({ name, about }) => `| \`${name}\` | ${about} |`),
  ].join('\n'),
};

/** A chapter with its tables as the code has them. @throws Error where it has no place for one. */
export function fillTables(chapter: string): string {
  return Object.entries(looksTables).reduce((text, [name, table]) => {
    const place = new RegExp(`(<!-- ${name} -->\n)[^]*?(\n<!-- end -->)`);
    if (!place.test(text)) throw new Error(`07-looks.md has no place for the table of ${name}`);
    return text.replace(
      place,
      (_, before: string, after: string) => `${before}\n${table}\n${after}`,
    );
  }, chapter);
}

function tableOf(group: Group): string {
  const own = properties.filter((property) => property.group === group);
  const isColoured = own.some(({ type }) => type.is === 'colour');
  const head = isColoured
    ? [
        '| property | what it is | light | dark | paper | seen in |',
        '| --- | --- | --- | --- | --- | --- |',
      ]
    : [
        '| property | what it is | values | screen | paper | seen in |',
        '| --- | --- | --- | --- | --- | --- |',
      ];
  const rows = own.map((property) => {
    const { name, about, where, defaults, modes } = property;
    const shown = (mode: 'light' | 'dark' | 'print') =>
      modes.includes(mode) ? `\`${short(defaults[mode] ?? '')}\`` : '–';
    const values = isColoured
      ? [shown('light'), shown('dark'), shown('print')]
      : [kindOf(property), shown('light'), shown('print')];
    return `| \`--${name}\` | ${[about, ...values, where].join(' | ')} |`;
  });
  return [`### ${titles[group]}`, '', ...head, ...rows].join('\n');
}

function kindOf({ type }: Property): string {
  switch (type.is) {
    case 'colour':
      return 'a colour';
    case 'faces':
      return 'names of type faces';
    case 'number':
      return `${type.least} to ${type.most}`;
    case 'length':
      return `${type.least}rem to ${type.most}rem`;
  }
}

function short(text: string): string {
  const [first = '', ...others] = text.split(', ');
  return others.length > 0 ? `${first}, …` : first;
}
