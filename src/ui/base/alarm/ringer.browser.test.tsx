import { act, cleanup, render } from "@testing-library/react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { Router } from "wouter";
import { memoryLocation } from "wouter/memory-location";
import { clearDesk, now, rack } from "../../../../tests/dipRack.tsx";
import { WatcherGuard } from "../parts/WatcherGuard.tsx";
import { useFleeting } from "../state/fleeting.ts";
import { ShopProvider } from "../state/shop.tsx";
import { useAlarmSource, useAlarmSources } from "./alarmSources.ts";
import type { AlarmSource, RingDue } from "./ringDue.ts";
import { Ringer } from "./Ringer.tsx";

const due = (id: string, dueMs: number): RingDue => ({
  id,
  dueMs,
  words: id,
  name: id,
  notice: { title: id, body: id },
  path: "/",
  calendar: () => ({ summary: id, description: id, durationMin: 5 }),
});
const source = (key: string, missed: AlarmSource["missed"], ...dues: readonly RingDue[]): AlarmSource => ({
  key,
  dues,
  since: now - 60_000,
  missed,
});
function Source({ of }: { readonly of: AlarmSource }): null {
  useAlarmSource(of);
  return null;
}
function Broken(): null {
  throw new RangeError("a run without an end");
}
const toasts = () => useFleeting.getState().toasts.map(({ text }) => text);
const look = () => act(() => void document.dispatchEvent(new Event("visibilitychange")));

beforeEach(() => useFleeting.setState({ toasts: [] }));
afterEach(async () => {
  cleanup();
  await clearDesk();
});

test("a source that fails is named, and the others go on ringing", async () => {
  const { shop, time } = await rack([]);
  render(
    <ShopProvider shop={shop}>
      <WatcherGuard watches="Alarms for kiln runs">
        <Broken />
      </WatcherGuard>
      <WatcherGuard watches="Alarms for pours">
        <Source of={source("pour/p", "rung", due("Skim the metal", now + 60_000))} />
      </WatcherGuard>
      <Ringer />
    </ShopProvider>,
  );
  expect(toasts()).toEqual([expect.stringMatching(/^Alarms for kiln runs: stopped/)]);
  time.now = now + 61_000;
  look();
  expect(toasts()).toContain("Skim the metal");
  look();
  expect(toasts().filter((text) => text === "Skim the metal")).toHaveLength(1);
});

test("each source keeps its own count of what it has rung, and one that is gone rings no more", async () => {
  const { shop, time } = await rack([]);
  const shown = render(
    <ShopProvider shop={shop}>
      <Source of={source("run/r", "rung", due("Tray out", now + 60_000))} />
      <Source of={source("pour/p", "rung", due("Pour time", now + 120_000))} />
      <Ringer />
    </ShopProvider>,
  );
  time.now = now + 61_000;
  look();
  expect(toasts()).toEqual(["Tray out"]);
  shown.rerender(
    <ShopProvider shop={shop}>
      <Source of={source("run/r", "rung", due("Tray out", now + 60_000))} />
      <Ringer />
    </ShopProvider>,
  );
  expect([...useAlarmSources.getState().sources.keys()]).toEqual(["run/r"]);
  time.now = now + 121_000;
  look();
  expect(toasts()).toEqual(["Tray out"]);
});

/** What is said at `path` when a rack's two dues and a fire's one came while the page stood still. */
async function saidAt(path: string): Promise<readonly string[]> {
  const { shop, time } = await rack([]);
  render(
    <Router hook={memoryLocation({ path }).hook}>
      <ShopProvider shop={shop}>
        <Source of={source("rack", "listed", due("Heron", now + 60_000), due("Fox", now + 70_000))} />
        <Source of={source("run/r", "rung", due("Tray out", now + 60_000))} />
        <Ringer />
      </ShopProvider>
    </Router>,
  );
  const said: string[] = [];
  const stop = useFleeting.subscribe(({ toasts: shown }) => void said.push(shown.at(-1)?.text ?? ""));
  time.now = now + 600_000;
  look();
  stop();
  return said;
}

test("what came while the page stood still is told in one line for the rack, and rings for the fire", async () => {
  expect(await saidAt("/shop")).toEqual(["Came due while the app was closed: Heron and Fox", "Tray out"]);
});

test("on the rack and on Due, which list what came, only the fire is said", async () => {
  expect(await saidAt("/")).toEqual(["Tray out"]);
});
