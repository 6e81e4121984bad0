import { afterEach, describe, expect, test } from "vitest";
import { bumpyBall } from "../../tests/bench/meshFigure.ts";
import { capsOf } from "./patternCaps.ts";
import { makePatternClient, type PatternClient } from "./patternClient.ts";
import type { PatternProgress } from "./patternMessages.ts";

const caps = capsOf({ memoryGb: 8, isTouch: false });
const clients: PatternClient[] = [];
const newClient = (): PatternClient => {
  const client = makePatternClient();
  clients.push(client);
  return client;
};
afterEach(() => clients.splice(0).forEach((client) => client.end()));

const sample = async (): Promise<Blob> => (await fetch("/sample-pattern.stl")).blob();

/** Binary STL of a mesh. */
function stlOf({ pos, idx }: ReturnType<typeof bumpyBall>): Blob {
  const view = new DataView(new ArrayBuffer(84 + (50 * idx.length) / 3));
  view.setUint32(80, idx.length / 3, true);
  for (let i = 0; i < idx.length; i++)
    for (let k = 0; k < 3; k++)
      view.setFloat32(84 + 50 * Math.floor(i / 3) + 12 + 12 * (i % 3) + 4 * k, pos[3 * idx[i]! + k]!, true);
  return new Blob([view.buffer]);
}

/** A text STL of a box of 10 with `left` triangles left out. */
function boxText(left = 0): Blob {
  const corner = (n: number): string => `${10 * (n & 1)} ${5 * (n & 2)} ${2.5 * (n & 4)}`;
  const faces = ["0 2 3", "0 3 1", "4 5 7", "4 7 6", "0 1 5", "0 5 4", "2 6 7", "2 7 3", "0 4 6", "0 6 2"];
  const all = [...faces, "1 3 7", "1 7 5"].slice(left);
  const facet = (face: string): string =>
    `facet normal 0 0 0\nouter loop\n${face
      .split(" ")
      .map((n) => `vertex ${corner(Number(n))}\n`)
      .join("")}endloop\nendfacet\n`;
  return new Blob([`solid box\n${all.map(facet).join("")}endsolid box\n`]);
}

describe("the sample", () => {
  test("is read, measured and asked, off the page's thread", async () => {
    const client = newClient();
    const told: PatternProgress[] = [];
    const open = await client.ask(
      "open",
      { file: await sample(), name: "sample-pattern.stl", caps },
      { onProgress: (one) => told.push(one) },
    );
    if (!open.ok) throw new Error(open.why);
    const { id, file, found } = open.answer;
    expect(id).toMatch(/^[0-9a-f]{64}$/);
    expect(file).toMatchObject({ format: "stl-binary", unit: null });
    expect(found.measures.watertight).toBe(true);
    expect(found.analysed).toEqual({ triangles: found.measures.triangles, isWhole: true });
    expect(new Set(told.map(({ stage }) => stage))).toContain("read");
    const up = [0, 0, 1] as const;
    const tips = await client.ask("tips", { mmPerUnit: 1, up, minRise: 2, minVolume: 50 });
    if (!tips.ok) throw new Error(tips.why);
    expect(tips.answer.tips.length).toBeGreaterThan(1);
    expect(tips.answer.high - tips.answer.low).toBeCloseTo(120, 0);
    const vents = tips.answer.tips.map(({ point }) => point);
    const asked = { mmPerUnit: 1, up, drains: [], columns: caps.columns };
    const [open0, vented] = [
      await client.ask("trapped", { ...asked, vents: [] }),
      await client.ask("trapped", { ...asked, vents }),
    ];
    if (!open0.ok || !vented.ok) throw new Error("not answered");
    // Nothing vented holds all of it; a vent on every tip lets all but crumbs out.
    expect(open0.answer.air.total / found.measures.volume!).toBeCloseTo(1, 1);
    expect(vented.answer.air.total).toBeLessThan(0.01 * found.measures.volume!);
    // Twice the size: eight times the volume, from the same mesh.
    const twice = await client.ask("trapped", { ...asked, mmPerUnit: 2, vents: [] });
    if (!twice.ok) throw new Error(twice.why);
    expect(twice.answer.air.total / open0.answer.air.total).toBeCloseTo(8, 6);
    const walls = await client.ask("thickness", { mmPerUnit: 1, cells: 96 });
    if (!walls.ok) throw new Error(walls.why);
    expect(walls.answer.field).toHaveLength(found.display.idx.length / 3);
    expect(walls.answer.thick[0]!.diameter).toBeGreaterThan(20);
    const off = await client.ask("trapped", { ...asked, vents: [[500, 0, 0]] });
    expect(off).toMatchObject({ ok: false, why: "refused" });
  }, 60_000);

  test("comes back from its display copy without the file", async () => {
    const client = newClient();
    const open = await client.ask("open", { file: await sample(), name: "a.stl", caps });
    if (!open.ok) throw new Error(open.why);
    const again = newClient();
    const asked = { mmPerUnit: 1, up: [0, 0, 1], minRise: 2, minVolume: 50 } as const;
    expect(await again.ask("tips", asked)).toEqual({ ok: false, why: "no-mesh" });
    await again.ask("restore", { mesh: open.answer.found.display });
    expect(await again.ask("tips", asked)).toEqual(await client.ask("tips", asked));
  });
});

describe("files that cannot be trusted", () => {
  test("say what was found, what was expected and what to do", async () => {
    const client = newClient();
    const open = (file: Blob, name: string) => client.ask("open", { file, name, caps });
    expect(await open(new Blob(["nothing of a mesh"]), "a.stl")).toMatchObject({ ok: false, why: "fault" });
    const cut = (await sample()).slice(0, 60);
    expect(await open(cut, "cut.stl")).toMatchObject({ ok: false, why: "fault" });
    const empty = await open(new Blob([]), "empty.stl");
    expect(empty).toMatchObject({ ok: false, why: "fault", fault: { code: "empty-file" } });
    // And the next good one is read as if nothing had been.
    expect(await open(boxText(), "box.stl")).toMatchObject({
      ok: true,
      answer: { found: { measures: { volume: 1000, area: 600 } } },
    });
  });

  test("a box without its lid has a range until its hole is closed on request", async () => {
    const client = newClient();
    const open = await client.ask("open", { file: boxText(2), name: "box.stl", caps });
    if (!open.ok) throw new Error(open.why);
    const { measures, mended } = open.answer.found;
    expect(measures.volume).toBeNull();
    expect(measures.openVolume?.reasons).toEqual(["border"]);
    expect(mended.left).toHaveLength(1);
    const closed = await client.ask("close-holes", { caps });
    if (!closed.ok) throw new Error(closed.why);
    expect(closed.answer.measures.volume).toBeCloseTo(1000, 3);
    expect(closed.answer.mended.capped).toHaveLength(1);
  });

  test("triangles a hair apart are not capped one by one, but joined on request", async () => {
    const client = newClient();
    const { pos, idx } = bumpyBall(2000);
    let seed = 1;
    const shake = (): number => (seed = (seed * 16_807) % 2_147_483_647) / 2_147_483_647 - 0.5;
    const apart = Float32Array.from({ length: 3 * idx.length }, (_, at) => {
      const size = Math.max(...pos.map(Math.abs).subarray(0, 300));
      return pos[3 * idx[Math.floor(at / 3)]! + (at % 3)]! + 1e-5 * size * shake();
    });
    const file = stlOf({ pos: apart, idx: Uint32Array.from(idx, (_, n) => n) });
    const open = await client.ask("open", { file, name: "cracked.stl", caps });
    if (!open.ok) throw new Error(open.why);
    expect(open.answer.found.measures.volume).toBeNull();
    expect(open.answer.found.mended.cappedCount).toBe(0);
    expect(open.answer.found.seams).toMatchObject({ after: 0 });
    const joined = await client.ask("join-seams", { caps });
    if (!joined.ok) throw new Error(joined.why);
    expect(joined.answer).toMatchObject({ seams: null, measures: { watertight: true, components: 1 } });
  });
});

describe("a large file", () => {
  test("of 300 000 triangles is open, shown by a copy on a phone", async ({ annotate }) => {
    const client = newClient();
    const file = stlOf(bumpyBall(300_000));
    const phone = capsOf({ memoryGb: 2, isTouch: true });
    const begun = performance.now();
    const open = await client.ask("open", { file, name: "ball.stl", caps: phone });
    const tookMs = performance.now() - begun;
    if (!open.ok) throw new Error(open.why);
    const { measures, display, analysed } = open.answer.found;
    expect(analysed.isWhole).toBe(true);
    expect(display.idx.length / 3).toBeLessThanOrEqual(1.25 * phone.display);
    expect(display.idx.length / 3).toBeGreaterThan(0.5 * phone.display);
    expect(measures.triangles).toBeGreaterThan(299_000);
    await annotate(`300 000 triangles, ${(file.size / 1e6).toFixed(1)} MB: open in ${tookMs.toFixed(0)} ms`);
  }, 60_000);

  test("above the cap is analysed by a lighter copy and says so, its volume still the whole mesh's", async () => {
    const client = newClient();
    const ball = bumpyBall(60_000);
    const small = { ...caps, full: 20_000, display: 5000 };
    const open = await client.ask("open", { file: stlOf(ball), name: "ball.stl", caps: small });
    const whole = await newClient().ask("open", { file: stlOf(ball), name: "ball.stl", caps });
    if (!open.ok || !whole.ok) throw new Error("not opened");
    expect(open.answer.found.analysed.isWhole).toBe(false);
    expect(open.answer.found.analysed.triangles).toBeLessThan(13_000);
    expect(open.answer.found.measures).toEqual(whole.answer.found.measures);
  });

  test("is left at once when told to stop, and the next question is heard", async () => {
    const client = newClient();
    const file = stlOf(bumpyBall(300_000));
    const stop = new AbortController();
    const stages = new Set<string>();
    const open = await client.ask(
      "open",
      { file, name: "ball.stl", caps },
      {
        signal: stop.signal,
        onProgress: ({ stage }) => {
          stages.add(stage);
          if (stage === "read") stop.abort();
        },
      },
    );
    expect(open).toEqual({ ok: false, why: "aborted" });
    expect([...stages]).toEqual(["read"]);
    expect(await client.ask("tips", { mmPerUnit: 1, up: [0, 0, 1], minRise: 2, minVolume: 50 })).toEqual({
      ok: false,
      why: "no-mesh",
    });
    expect(await client.ask("open", { file: boxText(), name: "box.stl", caps })).toMatchObject({ ok: true });
  });

  test("a long search stops when asked, and the worker keeps its mesh", async () => {
    const client = newClient();
    await client.ask("open", { file: await sample(), name: "a.stl", caps });
    const stop = new AbortController();
    const limits = { mmPerUnit: 1, minRise: 2, minVolume: 50 };
    const search = client.ask("attitudes", limits, { signal: stop.signal, onProgress: () => stop.abort() });
    expect(await search).toEqual({ ok: false, why: "aborted" });
    expect(await client.ask("tips", { ...limits, up: [0, 0, 1] })).toMatchObject({ ok: true });
  });
});

test("a browser without workers, or one that does not load, is an answer", async () => {
  const none = makePatternClient(() => {
    throw new Error("no workers here");
  });
  expect(await none.ask("restore", { mesh: bumpyBall(100) })).toEqual({ ok: false, why: "no-worker" });
  const broken = makePatternClient(() => new Worker("data:text/javascript,throw 1", { type: "module" }));
  expect(await broken.ask("restore", { mesh: bumpyBall(100) })).toEqual({ ok: false, why: "no-worker" });
});
