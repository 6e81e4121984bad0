/**
 * Indices of `keys` from the highest to the lowest, equal keys in their own order: a three-pass radix sort on the
 * bits of the 32-bit float. Keys must be finite; they are compared as 32-bit floats.
 */
export function descending(keys: Float32Array | Float64Array): Uint32Array {
  const n = keys.length;
  const bits = new Uint32Array(Float32Array.from(keys).buffer);
  const counts = new Uint32Array(3 * 2048);
  for (let i = 0; i < n; i++) {
    const raw = bits[i]!;
    // Flip so that unsigned order is descending float order; −0 counts as 0.
    const key = raw === 0x8000_0000 ? 0x7fff_ffff : raw & 0x8000_0000 ? raw : ~raw & 0x7fff_ffff;
    bits[i] = key;
    counts[key & 2047]!++;
    counts[2048 + ((key >>> 11) & 2047)]!++;
    counts[4096 + (key >>> 22)]!++;
  }
  for (let pass = 0; pass < 3; pass++) {
    let sum = 0;
    for (let i = pass * 2048; i < (pass + 1) * 2048; i++) {
      const count = counts[i]!;
      counts[i] = sum;
      sum += count;
    }
  }
  let from: Uint32Array = new Uint32Array(n);
  let to: Uint32Array = new Uint32Array(n);
  for (let i = 0; i < n; i++) from[i] = i;
  for (let pass = 0; pass < 3; pass++) {
    const shift = 11 * pass;
    const base = 2048 * pass;
    for (let i = 0; i < n; i++) {
      const item = from[i]!;
      to[counts[base + ((bits[item]! >>> shift) & 2047)]!++] = item;
    }
    [from, to] = [to, from];
  }
  return from;
}
