import { OBJLoader } from "three/addons/loaders/OBJLoader.js";
import { PLYLoader } from "three/addons/loaders/PLYLoader.js";
import { STLLoader } from "three/addons/loaders/STLLoader.js";
import { openMeshReader } from "../../src/geometry/readMesh.ts";
import { capsOf } from "../../src/workers/patternCaps.ts";
import { makePatternClient } from "../../src/workers/patternClient.ts";

/** One way of taking a file in, in a page of its own: `window.run(stage, file)` gives its milliseconds. */
const sliceBytes = 1_048_576;

/** The floor: every byte of the file once, as whole numbers. */
async function floor(file: Blob): Promise<void> {
  const words = new Int32Array(await file.arrayBuffer(), 0, file.size >> 2);
  let sum = 0;
  for (let i = 0; i < words.length; i++) sum = (sum + words[i]!) | 0;
  document.title = String(sum);
}

async function read(file: Blob, name: string): Promise<void> {
  const reader = openMeshReader(name, file.size);
  for (let at = 0; at < file.size; at += sliceBytes)
    reader.feed(new Uint8Array(await file.slice(at, at + sliceBytes).arrayBuffer()));
  document.title = String(reader.end().idx.length);
}

/** What the page does: hash, read, weld, measure, mend and thin out, in the worker. */
async function open(file: Blob, name: string): Promise<void> {
  const opened = await makePatternClient().ask("open", {
    file,
    name,
    caps: capsOf({ memoryGb: 8, isTouch: false }),
  });
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  document.title = String(opened.answer.found.measures.volume);
}

/** Only the loader: no weld, no measure. */
async function three(file: Blob, name: string): Promise<void> {
  if (name.endsWith(".obj")) {
    const group = new OBJLoader().parse(await file.text());
    document.title = String(group.children.length);
    return;
  }
  const loader = name.endsWith(".ply") ? new PLYLoader() : new STLLoader();
  document.title = String(loader.parse(await file.arrayBuffer()).attributes["position"]?.count);
}

const stages = { floor, read, open, three };

async function run(stage: keyof typeof stages, name: string): Promise<number> {
  const file = await (await fetch(name)).blob();
  const start = performance.now();
  await stages[stage](file, name);
  return performance.now() - start;
}

Object.assign(window, { run });
document.title = "ready";
