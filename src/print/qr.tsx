/** A QR code as one path of squares, so that any printer draws it sharp. */

import { encode } from 'uqr';

export function Qr({ text, title }: { readonly text: string; readonly title: string }) {
  const { data, size } = encode(text, { ecc: 'L', border: 2 });
  const path = data
    .flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : '')))
    .join('');
  return (
    <svg viewBox={`0 0 ${size} ${size}`} role="img" shapeRendering="crispEdges">
      <title>{title}</title>
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
