/** A drawn signature holds lines and nothing that acts, loads or links: it comes back out of files that strangers wrote. */

const allowedTags = new Set(['svg', 'g', 'path', 'circle', 'line', 'polyline', 'rect', 'title']);
const largest = 2 * 2 ** 20;

export function isPlainDrawing(bytes: Uint8Array): boolean {
  if (bytes.length > largest) return false;
  let drawing: string;
  try {
    drawing = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return false;
  }
  // Declarations and entities can smuggle anything; handlers, links and styles have no place in strokes.
  if (/<!|<\?|&|\bon[a-z]+\s*=|href|style|url\(|javascript:/i.test(drawing)) return false;
  const tags = [...drawing.matchAll(/<\s*\/?\s*([^\s/>]*)/g)].map(([, tag = '']) => tag);
  return tags[0] === 'svg' && tags.every((tag) => allowedTags.has(tag));
}

const beginnings: Readonly<Record<string, readonly number[]>> = {
  'image/jpeg': [0xff, 0xd8, 0xff],
  'image/png': [0x89, 0x50, 0x4e, 0x47],
  'image/webp': [0x52, 0x49, 0x46, 0x46],
};

/** Whether the bytes begin as a picture of this type does, or are a plain drawing. */
export function isPicture(type: string, bytes: Uint8Array): boolean {
  if (type === 'image/svg+xml') return isPlainDrawing(bytes);
  const beginning = beginnings[type];
  return beginning?.every((byte, at) => bytes[at] === byte) ?? false;
}
