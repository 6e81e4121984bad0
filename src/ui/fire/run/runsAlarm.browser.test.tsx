import { act, render } from "@testing-library/react";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { clearDesks, demoDesk, deskNow, readsDone, type Desk } from "../../../../tests/demoDesk.tsx";
import type { RunSegment } from "../../../logbook/entries/fireBodies.ts";
import { App } from "../../shell/App.tsx";
import { useFleeting } from "../../base/state/fleeting.ts";

const segments: readonly RunSegment[] = [
  { kind: "ramp", toC: 140, rateKPerH: 120 },
  { kind: "instruction", code: "vents-open" },
  { kind: "hold", atC: 140, minutes: 60 },
];

beforeEach(() => useFleeting.setState({ toasts: [] }));
afterEach(async () => {
  vi.restoreAllMocks();
  await clearDesks();
});

async function plan(desk: Desk, id: string): Promise<void> {
  const body = { kilnId: null, purpose: "firing", pieceIds: [], startC: 20, segments } as const;
  await desk.shop.log({ do: "log", stream: `run/${id}`, type: "run-planned", body });
}

test("a kiln that is on rings at its step on whatever screen; one that was only planned, or is over, does not", async () => {
  const desk = await demoDesk();
  for (const id of ["on", "planned", "over"]) await plan(desk, id);
  for (const id of ["on", "over"])
    await desk.shop.log({ do: "log", stream: `run/${id}`, type: "run-started", body: { kilnC: 20 } });
  await desk.shop.log({ do: "log", stream: "run/over", type: "run-ended", body: { result: "stopped" } });
  const time = { now: deskNow };
  const timers = vi.spyOn(window, "setInterval");
  // The rack is what the app opens with; no page of a run is shown.
  window.history.replaceState(null, "", "/");
  render(<App shop={{ ...desk.shop, clock: () => time.now }} base="" />);
  const rings = () => useFleeting.getState().toasts.filter(({ text }) => /vents/i.test(text)).length;
  const look = async (minutes: number): Promise<void> => {
    time.now = deskNow + minutes * minuteMs;
    act(() => void document.dispatchEvent(new Event("visibilitychange")));
    await readsDone(desk.db);
  };
  // It draws nothing; its watch is on once something looks at the clock every ten seconds.
  await vi.waitFor(() => expect(timers.mock.calls.map(([, everyMs]) => everyMs)).toContain(10_000), 10_000);
  // 120 K at 120 K/h: an hour up to the step.
  await look(59);
  expect(rings()).toBe(0);
  await look(60.5);
  await vi.waitFor(() => expect(rings()).toBe(1));
  await look(62);
  expect(rings()).toBe(1);
});
