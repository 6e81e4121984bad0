type Numbers = Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>;

/** A list of 32-bit numbers that grows by half. `n` are in use. */
export type Growing<Data extends Numbers> = { data: Data; n: number };

export const growingFloats = (room: number): Growing<Float32Array<ArrayBuffer>> => ({
  data: new Float32Array(Math.max(64, room)),
  n: 0,
});
export const growingIndices = (room: number): Growing<Uint32Array<ArrayBuffer>> => ({
  data: new Uint32Array(Math.max(64, room)),
  n: 0,
});

/** Makes room for `more` beyond what is in use. */
export function makeRoom<Data extends Numbers>(list: Growing<Data>, more: number): void {
  const wanted = list.n + more;
  if (wanted <= list.data.length) return;
  const Kind = list.data.constructor as new (length: number) => Data;
  const wider = new Kind(Math.max(wanted, Math.ceil(list.data.length * 1.5)));
  wider.set(list.data.subarray(0, list.n));
  list.data = wider;
}
