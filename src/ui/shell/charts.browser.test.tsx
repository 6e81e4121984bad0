import { millisecondsInHour as hourMs, millisecondsInMinute as minuteMs } from "date-fns/constants";
import { afterEach, describe, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { chartFaults } from "../../../tests/chartFaults.ts";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../tests/demoDesk.tsx";
import type { PackedAir } from "../../workers/airCsv/packAir.ts";
import { FilePlot } from "../air/rooms/csv/FilePlot.tsx";
import { paths } from "../base/state/paths.ts";
import { demoRoomId } from "../shop/demo/demoIds.ts";
import { Routes } from "./Routes.tsx";

afterEach(clearDesks);

const widths = [320, 390, 1280] as const;

/** Every chart on a page, at each width, with all folds open; a wide screen may lay the page out anew meanwhile. */
async function judged(charts: number): Promise<void> {
  for (const width of widths) {
    await page.viewport(width, 900);
    await vi.waitFor(() => {
      for (const fold of document.querySelectorAll("details")) fold.open = true;
      const figures = [...document.querySelectorAll<HTMLElement>("figure[aria-labelledby]")].filter((one) =>
        one.querySelector("svg text"),
      );
      expect(figures.length, `charts at ${width} px`).toBeGreaterThanOrEqual(charts);
      expect(
        figures.flatMap((figure) => chartFaults(figure)),
        `${width} px`,
      ).toEqual([]);
    }, 15_000);
  }
}

/** So many readings of a bucket, one a day, the newest near the desk's clock; limits from the tenth on. */
async function bucketRead({ shop }: Desk, seconds: readonly number[]): Promise<void> {
  const stream = "bucket/first-backup" as const;
  const start = deskNow - (seconds.length + 1) * 24 * hourMs;
  const body = {
    name: "Backup",
    use: "backup",
    slurry: "",
    cupId: "zahn-4",
    slurryC: 22,
    lowS: 11,
    highS: 14,
  };
  await shop.log({
    do: "log",
    stream,
    type: "bucket-set",
    body: { ...body, use: "backup" },
    at: start - hourMs,
  });
  for (const [i, cupS] of seconds.entries()) {
    const read = { cupId: "zahn-4", cupS, slurryC: 22 } as const;
    await shop.log({ do: "log", stream, type: "bucket-read", body: read, at: start + i * 24 * hourMs });
  }
}

const steady = [12.4, 12.7, 12.5, 12.9, 12.6, 12.8, 12.3, 12.6, 12.7, 12.5];

async function coatOf({ db }: Desk, name: RegExp): Promise<{ readonly id: string; readonly coatId: string }> {
  const row = (await db.projections.toArray()).find(
    (one) => one.kind === "piece" && one.shelf === "work" && name.test(one.state.plan.name),
  );
  if (row?.kind !== "piece") throw new Error(`no piece like ${String(name)} in the demo`);
  return { id: row.state.id, coatId: row.state.coats.at(-1)?.id ?? "" };
}

/** A coat found dry by the air in its bag, then covered: it teaches the shop. */
async function bagged(desk: Desk): Promise<void> {
  const { id, coatId } = await coatOf(desk, /heron/);
  const stream = `piece/${id}` as const;
  const seen = { method: "bag", rh: 0.5, roomRh: 0.5, minutes: 30, coatId } as const;
  await desk.shop.log({ do: "log", stream, type: "dryness-seen", body: seen, at: deskNow - 5 * minuteMs });
  const coat = { number: 9, step: null, kind: "backup", stuccoId: "16-30", prewet: false } as const;
  const body = { ...coat, roomId: "first", bucketId: "first-backup" };
  await desk.shop.log({ do: "log", stream, type: "coat-dipped", body, at: deskNow - minuteMs });
}

type Shown = {
  /** Files of the charts that stand there: `tests/house/charts.test.ts` holds that none is left out. */
  readonly files: readonly string[];
  readonly path: (desk: Desk) => string | Promise<string>;
  readonly before?: (desk: Desk) => Promise<void>;
};

const shown: Readonly<Record<string, Shown>> = {
  "a room": { files: ["AirChart"], path: () => paths.room(demoRoomId) },
  "a room's day": { files: ["DayChart"], path: () => paths.roomDay(demoRoomId) },
  "a bucket that climbs out of its limits": {
    files: ["SecondsChart", "RangeCard"],
    path: () => paths.bucketChart("first-backup"),
    before: (desk) => bucketRead(desk, [...steady, 12.6, 15.5, 13.4, 13.3, 14.8]),
  },
  "a bucket of sixty readings": {
    files: ["SecondsChart", "RangeCard"],
    path: () => paths.bucketChart("first-backup"),
    before: (desk) =>
      bucketRead(
        desk,
        Array.from({ length: 60 }, (_, i) => steady[i % 10] ?? 12.5),
      ),
  },
  "a drying piece": {
    files: ["DryingCurve"],
    path: async (desk) => paths.piece((await coatOf(desk, /heron/)).id),
  },
  "a coat": {
    files: ["CoatChart"],
    path: async (desk) => {
      const { id, coatId } = await coatOf(desk, /heron/);
      return paths.coat(id, coatId);
    },
  },
  "the final dry": {
    files: ["PlacesChart"],
    path: () => paths.finalDry("demo-plaque"),
  },
  "a run that is over": { files: ["ScheduleChart"], path: () => paths.run("demo-burnout") },
  "a run under way": { files: ["ScheduleChart"], path: () => paths.run("demo-preheat") },
  "a melt": { files: ["MeltChart"], path: () => paths.melt("demo-melt-1") },
  "a pour day": { files: ["TracksChart", "CoolingChart"], path: () => paths.pour("demo-pour") },
  "what was learned": { files: ["PairsPlot"], path: () => paths.learned, before: bagged },
};

describe("every chart says what to see, has its unit and its table, and hides nothing", () => {
  test.each(Object.entries(shown))("%s", async (_, { files, path, before }) => {
    const desk = await demoDesk();
    await before?.(desk);
    showAt(desk.shop, await path(desk), { route: "*", screen: Routes });
    await judged(files.length);
  });

  test("in US units", async () => {
    const desk = await demoDesk({ units: "us" });
    showAt(desk.shop, paths.pour("demo-pour"), { route: "*", screen: Routes });
    await judged(2);
  });

  test("a logger's file", async () => {
    const { shop } = await demoDesk();
    const count = 400;
    const air: PackedAir = {
      count,
      atS: Float64Array.from({ length: count }, (_, i) => deskNow / 1000 - (count - i) * 600),
      airC: Float64Array.from({ length: count }, (_, i) => 20 + 3 * Math.sin(i / 20)),
      rh: Float64Array.from({ length: count }, (_, i) => 0.5 + 0.2 * Math.cos(i / 30)),
      pressurePa: null,
      hasPressure: null,
    };
    showAt(shop, "/file", { route: "/file", screen: () => <FilePlot air={air} /> });
    await judged(1);
  });
});
