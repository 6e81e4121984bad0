/** Four tables, so that four bytes go at a step (slicing, M. Kounavis & F. Berry, 2005). Polynomial of ISO 3309. */
const tables = new Int32Array(4 * 256);
for (let i = 0; i < 256; i++) {
  let value = i;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  tables[i] = value;
}
for (let i = 256; i < 1024; i++) tables[i] = (tables[i - 256]! >>> 8) ^ tables[tables[i - 256]! & 255]!;

/** Check sum of a zip entry, carried on from `before` (0 at the start). */
export function crc32(before: number, bytes: Uint8Array): number {
  let sum = ~before;
  let i = 0;
  for (const end = bytes.length - 3; i < end; i += 4) {
    sum ^= bytes[i]! | (bytes[i + 1]! << 8) | (bytes[i + 2]! << 16) | (bytes[i + 3]! << 24);
    sum =
      tables[768 + (sum & 255)]! ^
      tables[512 + ((sum >>> 8) & 255)]! ^
      tables[256 + ((sum >>> 16) & 255)]! ^
      tables[sum >>> 24]!;
  }
  for (; i < bytes.length; i++) sum = (sum >>> 8) ^ tables[(sum ^ bytes[i]!) & 255]!;
  return ~sum;
}
