/** Bytes as text (RFC 4648, base64), and back. */

/** In pieces, because a call takes only so many arguments. */
const piece = 0x8000;

export function base64FromBytes(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += piece)
    binary += String.fromCharCode(...bytes.subarray(at, at + piece));
  return btoa(binary);
}

/** Undefined when the text is no base64. */
export function bytesFromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
  } catch {
    return undefined;
  }
}
