import { expect, test, vi } from "vitest";
import { makeTakeover } from "./takeover.ts";
import type { Wish } from "./takeover.ts";

function page({
  controlled = true,
  mayReload = () => true,
}: { controlled?: boolean; mayReload?: (wish: Wish) => boolean | Promise<boolean> } = {}) {
  const reload = vi.fn<() => void>();
  const onHeld = vi.fn<() => void>();
  return { reload, onHeld, takeover: makeTakeover({ controlled, mayReload, reload, onHeld }) };
}

test("a page with nothing half-written reloads when a new version takes over", async () => {
  const { takeover, reload, onHeld } = page();
  await takeover.controllerChanged();
  expect(reload).toHaveBeenCalledOnce();
  expect(onHeld).not.toHaveBeenCalled();
});

test("a page with a half-written form stays and says the new version took over", async () => {
  const { takeover, reload, onHeld } = page({ mayReload: async () => false });
  await takeover.controllerChanged();
  expect(reload).not.toHaveBeenCalled();
  expect(onHeld).toHaveBeenCalledOnce();
  expect(takeover.isStale()).toBe(true);
});

test("the first version to be stored reloads nothing, the next one does", async () => {
  const { takeover, reload } = page({ controlled: false });
  await takeover.controllerChanged();
  expect(reload).not.toHaveBeenCalled();
  expect(takeover.isStale()).toBe(false);
  await takeover.controllerChanged();
  expect(reload).toHaveBeenCalledOnce();
});

test("a page reloads once, however often the version changes under it", async () => {
  const { takeover, reload } = page();
  await Promise.all([takeover.controllerChanged(), takeover.controllerChanged()]);
  await takeover.controllerChanged();
  expect(reload).toHaveBeenCalledOnce();
});

test("a page knows whether its own person asked for the new version", async () => {
  const wishes: Wish[] = [];
  const mayReload = (wish: Wish): boolean => {
    wishes.push(wish);
    return wish === "here";
  };
  const here = page({ mayReload });
  here.takeover.asked();
  await here.takeover.controllerChanged();
  const elsewhere = page({ mayReload });
  await elsewhere.takeover.controllerChanged();
  expect(wishes).toEqual(["here", "elsewhere"]);
  expect(here.reload).toHaveBeenCalledOnce();
  expect(elsewhere.onHeld).toHaveBeenCalledOnce();
});

test("drafts that cannot be read hold the reload", async () => {
  const { takeover, reload, onHeld } = page({ mayReload: () => Promise.reject(new Error("closed")) });
  await takeover.controllerChanged();
  expect(reload).not.toHaveBeenCalled();
  expect(onHeld).toHaveBeenCalledOnce();
});
