/** A value of the store with its binary parts taken out, so that the rest can be written as JSON. */
export type PackedValue = { readonly json: unknown; readonly binaries: readonly Blob[] };

const mark = "$bin";
const arrays = {
  Int8Array,
  Uint8Array,
  Uint8ClampedArray,
  Int16Array,
  Uint16Array,
  Int32Array,
  Uint32Array,
  Float32Array,
  Float64Array,
} as const;
type ArrayName = keyof typeof arrays;
const isArrayName = (name: unknown): name is ArrayName =>
  typeof name === "string" && Object.hasOwn(arrays, name);

/** Binary parts become `{"$bin": n, "as": …}`; `n` counts on from `from`. What JSON can't hold is left out. */
export function pack(value: unknown, from = 0): PackedValue {
  const binaries: Blob[] = [];
  const put = (blob: Blob, as: string): object => {
    binaries.push(blob);
    return { [mark]: from + binaries.length - 1, as, type: blob.type };
  };
  const walk = (inner: unknown): unknown => {
    if (inner instanceof Blob) return put(inner, "Blob");
    if (inner instanceof ArrayBuffer) return put(new Blob([inner]), "ArrayBuffer");
    if (ArrayBuffer.isView(inner)) {
      const bytes = new Uint8Array(inner.byteLength);
      bytes.set(new Uint8Array(inner.buffer, inner.byteOffset, inner.byteLength));
      return put(new Blob([bytes]), inner.constructor.name);
    }
    if (Array.isArray(inner)) return inner.map(walk);
    if (typeof inner !== "object" || inner === null) return inner;
    return Object.fromEntries(Object.entries(inner).map(([key, one]) => [key, walk(one)]));
  };
  return { json: walk(value), binaries };
}

/** The value as it was; null where one of its binary parts is missing. */
export async function unpack(
  json: unknown,
  binary: (n: number) => Promise<Blob | null>,
): Promise<{ readonly value: unknown } | null> {
  let isWhole = true;
  const walk = async (inner: unknown): Promise<unknown> => {
    if (Array.isArray(inner)) return Promise.all(inner.map(walk));
    if (typeof inner !== "object" || inner === null) return inner;
    if (mark in inner && typeof inner[mark] === "number" && "as" in inner) {
      const blob = await binary(inner[mark]);
      if (blob === null) isWhole = false;
      return blob === null ? null : asGiven(blob, inner);
    }
    const fields = await Promise.all(
      Object.entries(inner).map(async ([key, one]) => [key, await walk(one)] as const),
    );
    return Object.fromEntries(fields);
  };
  const value = await walk(json);
  return isWhole ? { value } : null;
}

async function asGiven(
  blob: Blob,
  { as, type }: { readonly as?: unknown; readonly type?: unknown },
): Promise<unknown> {
  if (as === "Blob") return blob.slice(0, blob.size, typeof type === "string" ? type : "");
  const bytes = await blob.arrayBuffer();
  return isArrayName(as) ? new arrays[as](bytes) : bytes;
}
