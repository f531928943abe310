/** Photos as the camera gives them, made small enough to keep by the hundred. */

import { ok, type Result, refuse } from '../engine/base';
import { digestOfBytes } from '../engine/integrity';

export interface Photo {
  readonly digest: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Enough to read a marking on a part, at about a quarter of a megabyte. */
const longestSide = 1600;
const quality = 0.82;

/** A JPEG at most 1600 px long, upright, without what the camera wrote into the file (place, owner). */
export async function photoFrom(picked: Blob): Promise<Result<Photo, PhotoNotReadable>> {
  try {
    const picture = await createImageBitmap(picked, { imageOrientation: 'from-image' });
    const jpeg = await scaled(picture);
    const bytes = new Uint8Array(await jpeg.arrayBuffer());
    return ok({ digest: digestOfBytes(bytes), type: 'image/jpeg', bytes });
  } catch {
    return refuse({ code: 'photo-not-readable' });
  }
}
export type PhotoNotReadable = { readonly code: 'photo-not-readable' };

/** Width and height that fit into the longest side; small pictures stay as they are. */
export function fittedSize(width: number, height: number): { width: number; height: number } {
  const factor = Math.min(1, longestSide / Math.max(width, height));
  return { width: Math.round(width * factor), height: Math.round(height * factor) };
}

function scaled(picture: ImageBitmap): Promise<Blob> {
  const { width, height } = fittedSize(picture.width, picture.height);
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
  picture.close();
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('no picture'))),
      'image/jpeg',
      quality,
    );
  });
}
