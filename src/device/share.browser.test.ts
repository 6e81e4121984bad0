import { afterEach, expect, test, vi } from "vitest";
import { handOver } from "./share.ts";

const blob = new Blob(["BEGIN:VCALENDAR\r\n"], { type: "text/calendar" });
const name = "heron.ics";

afterEach(() => vi.unstubAllGlobals());

function phone({ canShare, share }: { canShare: boolean; share: () => Promise<void> }): void {
  Object.defineProperty(navigator, "canShare", { value: () => canShare, configurable: true });
  Object.defineProperty(navigator, "share", { value: share, configurable: true });
}

/** The downloads started, by name; none leaves the test. */
function downloads(): readonly string[] {
  const names: string[] = [];
  const click = (event: MouseEvent): void => {
    if (!(event.target instanceof HTMLAnchorElement)) return;
    names.push(event.target.download);
    event.preventDefault();
  };
  document.addEventListener("click", click, { once: true });
  return names;
}

test("a phone that shares files is given the file", async () => {
  phone({ canShare: true, share: () => Promise.resolve() });
  expect(await handOver({ blob, name })).toBe("shared");
});

test("closing the share sheet is no failure and starts no download", async () => {
  phone({ canShare: true, share: () => Promise.reject(new DOMException("closed", "AbortError")) });
  const started = downloads();
  expect(await handOver({ blob, name })).toBe("dismissed");
  expect(started).toEqual([]);
});

test.each([
  ["will not share this kind", { canShare: false, share: () => Promise.resolve() }],
  [
    "refuses while sharing",
    { canShare: true, share: () => Promise.reject(new DOMException("no", "NotAllowedError")) },
  ],
])("a phone that %s gets a download", async (_, kind) => {
  phone(kind);
  const started = downloads();
  expect(await handOver({ blob, name })).toBe("saved");
  expect(started).toEqual([name]);
});

test("a calendar file can go straight to the download", async () => {
  phone({ canShare: true, share: () => Promise.reject(new Error("not asked")) });
  const started = downloads();
  expect(await handOver({ blob, name, by: "download" })).toBe("saved");
  expect(started).toEqual([name]);
});
