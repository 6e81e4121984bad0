/** The first 32 bits of the fractional parts of a root of the first primes (FIPS 180-4, sections 4.2.2 and 5.3.3). */
function rootBits(count: number, power: number): Uint32Array {
  const bits = new Uint32Array(count);
  for (let n = 2, found = 0; found < count; n++) {
    let isPrime = true;
    for (let d = 2; d * d <= n; d++) if (n % d === 0) isPrime = false;
    if (isPrime) bits[found++] = (n ** power % 1) * 2 ** 32;
  }
  return bits;
}
const constants = rootBits(64, 1 / 3);

/** SHA-256 of bytes that come slice by slice, for files too large to hold at once (FIPS 180-4, section 6.2). */
export function sha256Stream(): {
  readonly feed: (bytes: Uint8Array) => void;
  /** Hex; nothing may be fed after. */
  readonly end: () => string;
} {
  const state = rootBits(8, 1 / 2);
  const words = new Uint32Array(64);
  const rest = new Uint8Array(64);
  let held = 0;
  let size = 0;

  function block(bytes: Uint8Array, at: number): void {
    for (let i = 0; i < 16; i++, at += 4)
      words[i] = (bytes[at]! << 24) | (bytes[at + 1]! << 16) | (bytes[at + 2]! << 8) | bytes[at + 3]!;
    for (let i = 16; i < 64; i++) {
      const [x, y] = [words[i - 15]!, words[i - 2]!];
      const low = ((x >>> 7) | (x << 25)) ^ ((x >>> 18) | (x << 14)) ^ (x >>> 3);
      const high = ((y >>> 17) | (y << 15)) ^ ((y >>> 19) | (y << 13)) ^ (y >>> 10);
      words[i] = words[i - 16]! + low + words[i - 7]! + high;
    }
    let a = state[0]! | 0;
    let b = state[1]! | 0;
    let c = state[2]! | 0;
    let d = state[3]! | 0;
    let e = state[4]! | 0;
    let f = state[5]! | 0;
    let g = state[6]! | 0;
    let h = state[7]! | 0;
    for (let i = 0; i < 64; i++) {
      const high = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7));
      const one = (h + high + ((e & f) ^ (~e & g)) + constants[i]! + words[i]!) | 0;
      const low = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10));
      const two = (low + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + one) | 0;
      d = c;
      c = b;
      b = a;
      a = (one + two) | 0;
    }
    state.set([a, b, c, d, e, f, g, h].map((value, i) => state[i]! + value));
  }

  function feed(bytes: Uint8Array): void {
    size += bytes.length;
    let at = 0;
    if (held > 0) {
      at = Math.min(64 - held, bytes.length);
      rest.set(bytes.subarray(0, at), held);
      held += at;
      if (held < 64) return;
      block(rest, 0);
      held = 0;
    }
    for (; at + 64 <= bytes.length; at += 64) block(bytes, at);
    rest.set(bytes.subarray(at));
    held = bytes.length - at;
  }

  function end(): string {
    const bitsLength = size * 8;
    const pad = new Uint8Array((held < 56 ? 56 : 120) - held + 8);
    pad[0] = 0x80;
    const view = new DataView(pad.buffer);
    view.setUint32(pad.length - 8, Math.floor(bitsLength / 2 ** 32));
    view.setUint32(pad.length - 4, bitsLength % 2 ** 32);
    feed(pad);
    return Array.from(state, (word) => word.toString(16).padStart(8, "0")).join("");
  }
  return { feed, end };
}
