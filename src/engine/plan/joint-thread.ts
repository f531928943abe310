/** The one metric thread that a joint's text names, where it names just one. */

import { type Thread, threadSchema } from '../torque';

/** Pitch of the coarse series by nominal diameter, mm (ISO 261; a size without a pitch is coarse: ISO 965-1). */
const coarsePitches: Readonly<Record<string, number>> = {
  '3': 0.5,
  '4': 0.7,
  '5': 0.8,
  '6': 1,
  '8': 1.25,
  '10': 1.5,
};

/**
 * `M5` is M5 × 0.8 mm, `M8×1` says its own pitch. Undefined for two sizes (`M5 or M6`), a size beyond M10 without its
 * pitch (axles are cut finer than the coarse series), and threads in inches.
 */
export function jointThread(text: string): Thread | undefined {
  const [whole, diameter = '', pitch] =
    /^M(\d+(?:\.\d+)?)(?:\s*[×x]\s*(\d+(?:\.\d+)?))?$/.exec(text.trim()) ?? [];
  if (whole === undefined) return undefined;
  const read = threadSchema.safeParse({
    diameter: Number(diameter),
    pitch: pitch === undefined ? coarsePitches[diameter] : Number(pitch),
  });
  return read.success ? read.data : undefined;
}
