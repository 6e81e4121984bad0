import { MeshFault } from "../meshFault.ts";
import { join } from "./pieces.ts";

/**
 * Undoes "deflate" (RFC 1951) as bytes arrive. `feed` gives how many of its bytes belonged to the stream; `done`
 * tells when the stream has ended. What comes out goes to `take` in parts that are only good until it returns.
 *
 * Of our own because an archive read from its front needs to know where a stream ended: neither the platform's
 * DecompressionStream, which fails on the bytes after it, nor fflate's streaming Inflate gives that place.
 */
export type Inflater = { readonly feed: (bytes: Uint8Array) => number; readonly done: () => boolean };

const windowBytes = 32_768;
const outBytes = windowBytes + 131_072;
const longestMatch = 258;

// RFC 1951 section 3.2.5.
const lengthExtra = Uint8Array.from({ length: 29 }, (_, i) => (i === 28 ? 0 : Math.max(0, (i >> 2) - 1)));
const distanceExtra = Uint8Array.from({ length: 30 }, (_, i) => Math.max(0, (i >> 1) - 1));
const basesFrom = (first: number, extra: Uint8Array): Uint16Array =>
  Uint16Array.from(extra, (_, i) => first + extra.slice(0, i).reduce((sum, bits) => sum + 2 ** bits, 0));
const lengthBase = basesFrom(3, lengthExtra);
lengthBase[28] = longestMatch;
const distanceBase = basesFrom(1, distanceExtra);
const codeOrder = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

/** A code as a table by the next `bits` bits: symbol · 16 + length, 0 where no code leads. */
type Code = { readonly table: Uint16Array; readonly bits: number };

function codeOf(lengths: Uint8Array): Code {
  const counts = new Uint16Array(16);
  for (const length of lengths) counts[length]!++;
  counts[0] = 0;
  let bits = 15;
  while (bits > 1 && counts[bits] === 0) bits--;
  const next = new Uint16Array(17);
  let code = 0;
  for (let length = 1; length <= 15; length++) {
    code = (code + counts[length - 1]!) << 1;
    next[length] = code;
    if (code + counts[length]! > 2 ** length) throw damaged("a code that names two things at once");
  }
  const table = new Uint16Array(2 ** bits);
  for (const [symbol, length] of lengths.entries()) {
    if (length === 0) continue;
    let backwards = 0;
    for (let i = 0, value = next[length]!++; i < length; i++, value >>= 1)
      backwards = (backwards << 1) | (value & 1);
    for (let at = backwards; at < table.length; at += 2 ** length) table[at] = (symbol << 4) | length;
  }
  return { table, bits };
}

const fixedLiterals = codeOf(
  Uint8Array.from({ length: 288 }, (_, i) => (i < 144 ? 8 : i < 256 ? 9 : i < 280 ? 7 : 8)),
);
const fixedDistances = codeOf(new Uint8Array(30).fill(5));

export function createInflater(take: (bytes: Uint8Array) => void): Inflater {
  const out = new Uint8Array(outBytes);
  let kept: Uint8Array = new Uint8Array(0);
  let input: Uint8Array = kept;
  let at = 0;
  let held = 0;
  let heldBits = 0;
  let to = windowBytes;
  let written = 0;
  let state: "head" | "stored" | "codes" | "done" = "head";
  let isLast = false;
  let storedLeft = 0;
  let literals = fixedLiterals;
  let distances = fixedDistances;

  function has(bits: number): boolean {
    while (heldBits < bits && at < input.length) {
      held |= input[at++]! << heldBits;
      heldBits += 8;
    }
    return heldBits >= bits;
  }
  function pull(bits: number): number {
    const value = held & ((1 << bits) - 1);
    held >>>= bits;
    heldBits -= bits;
    return value;
  }
  function flush(): void {
    if (to === windowBytes) return;
    take(out.subarray(windowBytes, to));
    written += to - windowBytes;
    out.copyWithin(0, to - windowBytes, to);
    to = windowBytes;
  }

  /** The next symbol of a code; −1 when its bits have not all arrived. */
  function symbol(code: Code): number {
    has(15);
    const entry = code.table[held & ((1 << code.bits) - 1)]!;
    const length = entry & 15;
    if (length === 0 && heldBits >= code.bits) throw damaged("bits that mean nothing");
    if (length === 0 || length > heldBits) return -1;
    held >>>= length;
    heldBits -= length;
    return entry >>> 4;
  }

  /** Reads the head of a block; false when it has not all arrived. */
  function head(): boolean {
    if (!has(3)) return false;
    isLast = pull(1) === 1;
    const kind = pull(2);
    if (kind === 3) throw damaged("a block of no known kind");
    if (kind === 0) {
      pull(heldBits & 7);
      if (!has(16)) return false;
      storedLeft = pull(16);
      if (!has(16)) return false;
      if (pull(16) !== (storedLeft ^ 0xffff)) throw damaged("a block whose length is not confirmed");
      state = "stored";
      return true;
    }
    state = "codes";
    literals = fixedLiterals;
    distances = fixedDistances;
    return kind === 1 || dynamicCodes();
  }

  function dynamicCodes(): boolean {
    if (!has(14)) return false;
    const [many, far, few] = [pull(5) + 257, pull(5) + 1, pull(4) + 4];
    const ofCodes = new Uint8Array(19);
    for (const place of codeOrder.slice(0, few)) {
      if (!has(3)) return false;
      ofCodes[place] = pull(3);
    }
    const code = codeOf(ofCodes);
    const lengths = new Uint8Array(many + far);
    for (let n = 0; n < lengths.length;) {
      const next = symbol(code);
      if (next < 0) return false;
      if (next < 16) {
        lengths[n++] = next;
        continue;
      }
      const [bits, base] = next === 16 ? [2, 3] : next === 17 ? [3, 3] : [7, 11];
      if (!has(bits)) return false;
      const times = base + pull(bits);
      if (n + times > lengths.length || (next === 16 && n === 0)) throw damaged("code lengths that overrun");
      if (next === 16) lengths.fill(lengths[n - 1]!, n, n + times);
      n += times;
    }
    literals = codeOf(lengths.subarray(0, many));
    distances = codeOf(lengths.subarray(many));
    return true;
  }

  /** Decodes until the block ends (true) or the input does (false). In local variables: this is where the time goes. */
  function codes(): boolean {
    const source = input;
    const size = source.length;
    const [table, mask] = [literals.table, literals.table.length - 1];
    const [farTable, farMask] = [distances.table, distances.table.length - 1];
    let [place, bits, count, end] = [at, held, heldBits, to];
    for (;;) {
      if (end + longestMatch > outBytes) {
        to = end;
        flush();
        end = to;
      }
      // Where the symbol starts, to come back to when the rest of it is still to arrive.
      at = place;
      held = bits;
      heldBits = count;
      to = end;
      while (count < 20 && place < size) {
        bits |= source[place++]! << count;
        count += 8;
      }
      const entry = table[bits & mask]!;
      const size1 = entry & 15;
      if (size1 === 0 && count >= literals.bits) throw damaged("bits that mean nothing");
      if (size1 === 0 || size1 > count) return false;
      bits >>>= size1;
      count -= size1;
      const next = entry >>> 4;
      if (next < 256) {
        out[end++] = next;
        continue;
      }
      if (next === 256) break;
      if (next > 285) throw damaged("a length that does not exist");
      const lengthBits = lengthExtra[next - 257]!;
      if (lengthBits > count) return false;
      const length = lengthBase[next - 257]! + (bits & ((1 << lengthBits) - 1));
      bits >>>= lengthBits;
      count -= lengthBits;
      while (count < 20 && place < size) {
        bits |= source[place++]! << count;
        count += 8;
      }
      const farEntry = farTable[bits & farMask]!;
      const size2 = farEntry & 15;
      if (size2 === 0 && count >= distances.bits) throw damaged("bits that mean nothing");
      if (size2 === 0 || size2 > count) return false;
      bits >>>= size2;
      count -= size2;
      const far = farEntry >>> 4;
      if (far > 29) throw damaged("a distance that does not exist");
      const farBits = distanceExtra[far]!;
      while (count < farBits && place < size) {
        bits |= source[place++]! << count;
        count += 8;
      }
      if (farBits > count) return false;
      const distance = distanceBase[far]! + (bits & ((1 << farBits) - 1));
      bits >>>= farBits;
      count -= farBits;
      if (distance > written + end - windowBytes) throw damaged("a copy from before the start");
      for (const stop = end + length; end < stop; end++) out[end] = out[end - distance]!;
    }
    at = place;
    held = bits;
    heldBits = count;
    to = end;
    return true;
  }

  function feed(bytes: Uint8Array): number {
    const before = kept.length;
    input = before === 0 ? bytes : join(kept, bytes);
    at = 0;
    kept = new Uint8Array(0);
    while (state !== "done") {
      if (state === "head") {
        const [at0, held0, bits0] = [at, held, heldBits];
        if (head()) continue;
        state = "head";
        [at, held, heldBits] = [at0, held0, bits0];
        break;
      }
      if (state === "stored") {
        copyStored();
        if (storedLeft > 0) break;
      } else if (!codes()) break;
      state = isLast ? "done" : "head";
    }
    flush();
    if (state !== "done") {
      kept = input.slice(at);
      return bytes.length;
    }
    return at - (heldBits >> 3) - before;
  }

  function copyStored(): void {
    // Bytes already held come first.
    while (storedLeft > 0 && heldBits >= 8) {
      if (to === outBytes) flush();
      out[to++] = pull(8);
      storedLeft--;
    }
    while (storedLeft > 0 && at < input.length) {
      if (to === outBytes) flush();
      const number = Math.min(storedLeft, input.length - at, outBytes - to);
      out.set(input.subarray(at, at + number), to);
      at += number;
      to += number;
      storedLeft -= number;
    }
  }

  return { feed, done: () => state === "done" };
}

const damaged = (found: string): MeshFault =>
  new MeshFault({
    code: "bad-archive",
    found,
    expected: "packed data that can be unpacked",
    remedy: "copy or export the file again; it is damaged",
  });
