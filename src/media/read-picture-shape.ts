import { readPlainFile } from '../files/index.ts';
import type { PictureShape } from './types.ts';

/** Bytes: of what is larger nothing but that is told (a judgement, no source). */
const largest = 20_000_000;

/**
 * @param file a picture of `media/` that is fit to be published.
 * @throws FileRefusedError
 */
export async function readPictureShape(folder: string, file: string): Promise<PictureShape> {
  const { bytes, size } = await readPlainFile(folder, file, largest);
  // Most courses name no such picture: nothing is loaded for them.
  const { shapeOf } = await import('./picture-shape.ts');
  return { ...shapeOf(file, bytes), bytes: size };
}
