import { closeSync, existsSync, fstatSync, openSync, readFileSync, readSync } from "node:fs";
import { bodiesOf } from "../../src/geometry/bodies.ts";
import { edgesOf } from "../../src/geometry/edges.ts";
import { massPropertiesOf } from "../../src/geometry/massProperties.ts";
import { openMeshReader } from "../../src/geometry/readMesh.ts";
import { unionVolumeOf } from "../../src/geometry/unionVolume.ts";
import { measureMesh, readMesh } from "../meshes/atOnce.ts";

/** One stage in a process of its own: node meshStage.mjs stage file. Prints its times in ms and the peak memory in MB. */
const [stage = "", file = ""] = process.argv.slice(2);
/** The system's own high mark of this process; where it keeps none, what is held now. */
function peakMb(): number {
  const mark = existsSync("/proc/self/status")
    ? /VmHWM:\s+(\d+)/.exec(readFileSync("/proc/self/status", "utf8"))
    : null;
  return mark === null ? process.memoryUsage().rss / 1e6 : Number(mark[1]) / 1024;
}

function timed<Result>(run: () => Result): readonly [ms: number, result: Result] {
  const start = performance.now();
  const result = run();
  return [performance.now() - start, result];
}

/** The floor: every byte of the file once, as whole numbers. */
function passOver(bytes: Uint8Array): number {
  const words = new Int32Array(bytes.buffer, bytes.byteOffset, bytes.length >> 2);
  let sum = 0;
  for (let i = 0; i < words.length; i++) sum = (sum + words[i]!) | 0;
  return sum;
}

function inSlices(): ReturnType<typeof readMesh> {
  const handle = openSync(file, "r");
  const reader = openMeshReader(file, fstatSync(handle).size);
  const slice = new Uint8Array(1_048_576);
  for (let n = readSync(handle, slice); n > 0; n = readSync(handle, slice)) reader.feed(slice.subarray(0, n));
  closeSync(handle);
  return reader.end();
}

const whole = (): Uint8Array => {
  const bytes = readFileSync(file);
  return new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.length);
};

const times: Record<string, number> = {};
const before = peakMb();
if (stage === "floor") {
  const bytes = whole();
  [times["pass over the bytes"]] = timed(() => passOver(bytes));
} else if (stage === "read") {
  const bytes = whole();
  [times["read and weld"]] = timed(() => readMesh(bytes, file));
} else if (stage === "slices") [times["read in 1 MB slices, disk included"]] = timed(inSlices);
else if (stage === "measure") {
  const mesh = inSlices();
  [times["edges"]] = timed(() => edgesOf(mesh));
  [times["bodies"]] = timed(() => bodiesOf(mesh));
  [times["mass"]] = timed(() => massPropertiesOf(mesh));
  [times["mass and union by columns"]] = timed(() => unionVolumeOf(mesh, massPropertiesOf(mesh).volume));
  [times["measureMesh, all of it"]] = timed(() => measureMesh(mesh));
}
process.stdout.write(JSON.stringify({ times, peakMb: peakMb() - before }));
