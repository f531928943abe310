/** A pen line that stands for an invented customer's signature: one wave for each letter. */

export function drawnName(name: string): string {
  const waves = [...name].map((letter, index) => {
    const height = 18 + ((letter.codePointAt(0) ?? 0) % 23);
    const x = 12 + index * 15;
    return letter === ' ' ? `M${x + 10} 52` : `Q${x} ${52 - height} ${x + 8} 52 T${x + 15} 50`;
  });
  const width = 40 + name.length * 15;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} 80">` +
    `<path d="M10 52 ${waves.join(' ')}" fill="none" stroke="#1b1b1b" stroke-width="2.5"/></svg>`
  );
}
