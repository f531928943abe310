/** Numbers as they are spoken: `five`, `twenty-two`, `six point five`, `four and a half`, `one hundred and ten`. */

const units = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;
const tens = [
  'twenty',
  'thirty',
  'forty',
  'fifty',
  'sixty',
  'seventy',
  'eighty',
  'ninety',
] as const;

const longestFirst = (words: readonly string[]) =>
  [...words].sort((a, b) => b.length - a.length).join('|');
const digit = longestFirst(units.slice(0, 10));
const below20 = longestFirst(units);
const below100 = `(?:(?<tens>${tens.join('|')})(?:[-\\s]+(?<one>${digit}))?|(?<small>${below20}))`;
const fraction = `(?:\\s+point(?<digits>(?:\\s+(?:${digit}))+)|\\s+(?<half>and\\s+a\\s+half))`;

const spoken = new RegExp(
  `(?:(?:(?<hundreds>one|a)\\s+hundred(?:\\s+and\\s+|\\s+)?)?${below100}|(?<even>one|a)\\s+hundred)${fraction}?(?!\\p{L}|\\s+hundred)`,
  'iuy',
);

/** The spoken number that starts at a place of the text, as its value and how many decimals were spoken. */
export function spokenNumberAt(
  text: string,
  at: number,
): { readonly value: number; readonly decimals: number; readonly length: number } | undefined {
  spoken.lastIndex = at;
  const found = spoken.exec(text);
  if (found === null) return undefined;
  const { hundreds, tens: ten, one, small, even, digits, half } = found.groups ?? {};
  const whole =
    (hundreds === undefined && even === undefined ? 0 : 100) +
    (ten === undefined ? 0 : placeIn(tens, ten) * 10 + 20) +
    (one === undefined ? 0 : placeIn(units, one)) +
    (small === undefined ? 0 : placeIn(units, small));
  const decimals = half === undefined ? decimalsOf(digits) : '5';
  return {
    value: Number(`${whole}.${decimals}`),
    decimals: decimals.length,
    length: found[0].length,
  };
}

function decimalsOf(digits = ''): string {
  const words = digits.split(/\s+/).filter((word) => word !== '');
  return words.map((word) => placeIn(units, word)).join('');
}

function placeIn(words: readonly string[], word: string): number {
  return words.indexOf(word.toLowerCase());
}
