/** Article numbers as printed under a bar code (GTIN-8, -12, -13, -14). */

/**
 * Whether the last digit is the check digit of the rest.
 * Source: GS1 General Specifications: from the right of the body weights 3, 1, 3 …; check = (10 − sum mod 10) mod 10.
 */
export function isGtin(text: string): boolean {
  if (!/^(\d{8}|\d{12,14})$/.test(text)) return false;
  return gtinCheckDigit(text.slice(0, -1)) === Number(text.at(-1));
}

/** The check digit of a body of digits. Source: GS1 General Specifications. */
export function gtinCheckDigit(body: string): number {
  const sum = [...body].reverse().reduce((total, digit, index) => {
    return total + Number(digit) * (index % 2 === 0 ? 3 : 1);
  }, 0);
  return (10 - (sum % 10)) % 10;
}
