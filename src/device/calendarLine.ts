/** RFC 5545, 3.1: lines of at most 75 octets, the line break not counted. */
const lineOctets = 75;

/**
 * A value of type TEXT, RFC 5545, 3.3.11: backslash, semicolon and comma escaped, line breaks as `\n`.
 *
 * Control characters have no place in a content line (3.1) and are left out, the tab excepted. A half of a
 * surrogate pair becomes U+FFFD, as it would in UTF-8 anyway.
 */
export function calendarText(text: string): string {
  return text
    .replaceAll(/\r\n|[\r\n\u0085\u2028\u2029]/g, "\n")
    .replaceAll(/\p{Cs}/gu, "\uFFFD")
    .replaceAll(/[\\;,]/g, String.raw`\$&`)
    .replaceAll("\n", String.raw`\n`)
    .replaceAll(/(?!\t)[\p{Cc}]/gu, "");
}

/** An instant as RFC 5545, 3.3.5, form 2: UTC, whole seconds rounded up. */
export function utcStamp(epochMs: number): string {
  const whole = Math.ceil(epochMs / 1000) * 1000;
  if (!(whole >= firstMs && whole <= lastMs))
    throw new RangeError(`a calendar time must lie in the years 1 to 9999, found ${epochMs} ms`);
  return new Date(whole).toISOString().replaceAll(/[-:]|\.\d+/g, "");
}

const firstMs = Date.parse("0001-01-01T00:00:00Z");
const lastMs = Date.parse("9999-12-31T23:59:59Z");

/** One content line, folded and ended by CRLF. Never breaks inside a character of several octets. */
export function contentLine(line: string): string {
  let folded = "";
  let octets = 0;
  for (const character of line) {
    const size = utf8Octets(character);
    if (octets + size > lineOctets) {
      folded += "\r\n ";
      octets = 1;
    }
    folded += character;
    octets += size;
  }
  return `${folded}\r\n`;
}

function utf8Octets(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  if (point < 0x80) return 1;
  if (point < 0x8_00) return 2;
  return point < 0x1_00_00 ? 3 : 4;
}
