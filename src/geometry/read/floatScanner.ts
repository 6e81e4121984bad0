/** Where a scan stopped. */
export type Cursor = { at: number };

const powersOfTen = Float64Array.from({ length: 23 }, (_, i) => Number(`1e${i}`));
const [plus, minus, dot, slash, backslash, zero] = [43, 45, 46, 47, 92, 48];
const exponentLower = 101;
const longestNumber = 1024;
const mostDigits = 24;
const slack = 4e-15;

/**
 * The decimal number that starts at `from`, and where it ends. NaN when what stands there is not one. A number ends
 * at a blank, a slash or a backslash. Up to 15 digits it is what Number() gives: both the digits and tens to 22 are exact
 * in a double, so one division or product rounds once (W. D. Clinger, How to Read Floating Point Numbers Accurately,
 * 1990). Longer ones round to the same 32-bit float, which is all a mesh keeps.
 */
export function scanFloat(bytes: Uint8Array, from: number, end: number, cursor: Cursor): number {
  let at = from;
  let negative = false;
  if (at < end && (bytes[at] === minus || bytes[at] === plus)) {
    negative = bytes[at] === minus;
    at++;
  }
  let whole = 0;
  let digits = 0;
  let tens = 0;
  const first = at;
  for (; at < end; at++) {
    const digit = bytes[at]! - zero;
    if (digit < 0 || digit > 9) break;
    whole = whole * 10 + digit;
    if (whole > 0) digits++;
  }
  let seen = at - first;
  if (at < end && bytes[at] === dot) {
    const point = ++at;
    for (; at < end; at++) {
      const digit = bytes[at]! - zero;
      if (digit < 0 || digit > 9) break;
      whole = whole * 10 + digit;
      if (whole > 0) digits++;
    }
    tens = point - at;
    seen += at - point;
  }
  if (seen > 0 && at < end && (bytes[at]! | 32) === exponentLower) {
    at++;
    const down = bytes[at] === minus;
    if (at < end && (bytes[at] === minus || bytes[at] === plus)) at++;
    const start = at;
    let power = 0;
    for (; at < end; at++) {
      const digit = bytes[at]! - zero;
      if (digit < 0 || digit > 9) break;
      if (power < 100_000) power = power * 10 + digit;
    }
    if (at === start) seen = 0;
    tens += down ? -power : power;
  }
  if (seen === 0 || !(at >= end || isBreak(bytes[at]!))) {
    while (at < end && bytes[at]! > 32) at++;
    cursor.at = at;
    return NaN;
  }
  cursor.at = at;
  if (digits > mostDigits || tens > 22 || tens < -22) return slowly(bytes, from, at);
  const value = tens < 0 ? whole / powersOfTen[-tens]! : whole * powersOfTen[tens]!;
  // Each digit past the fifteenth may have cost half a unit in the last place; only beside a tie of floats does it show.
  if (digits > 15 && Math.fround(value * (1 - slack)) !== Math.fround(value * (1 + slack)))
    return slowly(bytes, from, at);
  return negative ? -value : value;
}

const slowly = (bytes: Uint8Array, from: number, end: number): number =>
  end - from > longestNumber ? NaN : Number(textOf(bytes, from, end));

const isBreak = (byte: number): boolean => byte <= 32 || byte === slash || byte === backslash;

/** Bytes as text, one character a byte; at most 1024 of them. */
export function textOf(bytes: Uint8Array, from: number, end: number): string {
  return String.fromCharCode(...bytes.subarray(from, Math.min(end, from + longestNumber)));
}
