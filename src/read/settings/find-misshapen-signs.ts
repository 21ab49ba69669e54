import type { Place } from '../../diagnostics/index.ts';
import type { PictureShape } from '../../media/index.ts';
import type { CourseProblem, CourseSettings } from '../types.ts';

/** Pixels of a side: the largest icon that is drawn of it. */
const iconSide = 512;
/** Bytes: every page loads it (our judgement, no source). */
const largestIcon = 300_000;
/** Pixels of a card, as sites show it beside a link (Open Graph; the size is common practice, no source). */
const card = { width: 1200, height: 630 };
/** A head shows a logo 28 pixels high, a dense screen with twice as many. */
const logoHeight = 56;
/** A logo is so many times as wide as high, or twice as high as wide, at most (our judgement, no source). */
const widestLogo = 6;

type Fault = Pick<CourseProblem, 'message' | 'hint'> & Partial<Pick<CourseProblem, 'rule'>>;

/** Reports a logo, icon or card whose size or shape readers would see cut, small or blurred. */
export function findMisshapenSigns(
  { logo, icon, card: ownCard }: CourseSettings,
  places: Readonly<Record<string, Place>>,
  pictures: ReadonlyMap<string, PictureShape>,
): CourseProblem[] {
  const named = [
    ...Object.entries(logo ?? {}).map(([on, file]) => [`logo.${on}`, file, logoFaults] as const),
    ['icon', icon, iconFaults] as const,
    ['card', ownCard, cardFaults] as const,
  ];
  return named.flatMap(([setting, file, faultsOf]): CourseProblem[] => {
    const place = places[setting] ?? places[setting.replace(/\..*/, '')];
    const shape = file === undefined ? undefined : pictures.get(file);
    if (file === undefined || shape === undefined || place === undefined) return [];
    return [...faultsOf(file, shape)].map((fault) => ({ rule: 'picture-shape', place, ...fault }));
  });
}

function* iconFaults(file: string, { size, bytes, hasText }: PictureShape): Generator<Fault> {
  if (bytes > largestIcon) {
    yield {
      rule: 'course-setting',
      message: `\`${file}\` has ${Math.ceil(bytes / 1000)} KB, and an icon has ${largestIcon / 1000} KB at most: each page loads it.`,
      hint: `Save it smaller: ${iconSide} by ${iconSide} pixels are enough.`,
    };
  }
  if (hasText) {
    yield {
      rule: 'course-setting',
      message: `\`${file}\` holds text, which an icon shows in another type face, or not at all.`,
      hint: 'Turn the text into outlines, or save it as a PNG.',
    };
  }
  if (size === undefined) {
    yield sizeless(file);
    return;
  }
  const { width, height } = size;
  if (!isNear(width / height, 1)) {
    yield {
      message: `\`${file}\` is ${told(size)}, and an icon is square.`,
      hint: 'Crop it, or give it room of its own on two sides: tabs and start pages show it small, with a gap there.',
    };
  } else if (isRaster(file) && width < iconSide) {
    yield {
      message: `\`${file}\` is ${told(size)}, and an icon is shown with up to ${iconSide} by ${iconSide} pixels.`,
      hint: `Save it with ${iconSide} by ${iconSide} pixels, or as an SVG: enlarged it is blurred.`,
    };
  }
}

function* cardFaults(file: string, { size }: PictureShape): Generator<Fault> {
  if (size === undefined) {
    yield sizeless(file);
    return;
  }
  const { width, height } = size;
  const wanted = `${card.width} by ${card.height} pixels`;
  if (!isNear(width / height, card.width / card.height)) {
    yield {
      message: `\`${file}\` is ${told(size)}, and a card is ${wanted}: sites cut off what is more.`,
      hint: `Crop it to that shape, and save it with ${wanted}.`,
    };
  } else if (width < card.width * 0.99) {
    yield {
      message: `\`${file}\` is ${told(size)}, and a card is ${wanted}: sites show it blurred, or small beside the link.`,
      hint: `Save it with ${wanted}.`,
    };
  }
}

function* logoFaults(file: string, { size }: PictureShape): Generator<Fault> {
  if (size === undefined) {
    yield sizeless(file);
    return;
  }
  const { width, height } = size;
  if (width > widestLogo * height || height > 2 * width) {
    yield {
      message: `\`${file}\` is ${told(size)}, and the head of a page shows a logo in one line of text.`,
      hint: `Make it at most ${widestLogo} times as wide as high, and twice as high as wide.`,
    };
  } else if (isRaster(file) && height < logoHeight) {
    yield {
      message: `\`${file}\` is ${told(size)}: dense screens show a logo ${logoHeight} pixels high.`,
      hint: 'Save it larger, or as an SVG: enlarged it is blurred.',
    };
  }
}

function sizeless(file: string): Fault {
  return {
    message: `\`${file}\` does not say how large it is.`,
    hint: file.toLowerCase().endsWith('.svg')
      ? 'Give its `<svg>` a `viewBox`, such as `viewBox="0 0 512 512"`.'
      : 'Save it again in the program that it comes from.',
  };
}

function isRaster(file: string): boolean {
  return !file.toLowerCase().endsWith('.svg');
}

/** Within two percent, which nobody sees. */
function isNear(ratio: number, wanted: number): boolean {
  return Math.abs(ratio / wanted - 1) <= 0.02;
}

function told({ width, height }: NonNullable<PictureShape['size']>): string {
  return `${Math.round(width)} by ${Math.round(height)} pixels`;
}
