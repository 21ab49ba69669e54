import { imageSize } from 'image-size';
import type { PictureShape } from './types.ts';

/** What the bytes of a picture say of it. */
export function shapeOf(file: string, bytes: Uint8Array): PictureShape {
  const hasText =
    file.toLowerCase().endsWith('.svg') && /<text[\s>]/.test(Buffer.from(bytes).toString('utf8'));
  const shape = { bytes: bytes.length, hasText };
  try {
    const { width, height, orientation = 1 } = imageSize(bytes);
    // A photo may be stored on its side, with a note of how it is to be turned (Exif, orientation 5 to 8).
    const isTurned = orientation >= 5;
    return { ...shape, size: isTurned ? { width: height, height: width } : { width, height } };
  } catch {
    // It tells the library no size: the finding is that it tells none.
    return shape;
  }
}
