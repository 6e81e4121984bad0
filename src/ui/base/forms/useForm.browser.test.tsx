import { cleanup, renderHook, act } from "@testing-library/react";
import type { ReactNode } from "react";
import { afterEach, expect, test } from "vitest";
import { v7 } from "uuid";
import { startingSettings } from "../../../storage/settings.ts";
import { openShopDb } from "../../../storage/shopDb.ts";
import { writeDraft } from "../../../storage/drafts.ts";
import { makeShop, ShopProvider } from "../state/shop.tsx";
import { useForm } from "./useForm.ts";

type Draft = { readonly kilnC: number | null; readonly note: string };
const start: Draft = { kilnC: 870, note: "" };

function desk(db = openShopDb(`form-${v7()}`)) {
  const shop = makeShop({ db, clock: () => 0, newId: () => v7(), opened: startingSettings });
  const wrapper = ({ children }: { readonly children: ReactNode }) => (
    <ShopProvider shop={shop}>{children}</ShopProvider>
  );
  return { db, wrapper };
}

afterEach(cleanup);

test("a filled-in figure is untouched until a person sets it, be it to the same value", () => {
  const { result } = renderHook(() => useForm("kiln", start), desk());
  expect(result.current.isTouched()).toBe(false);
  act(() => result.current.set({ note: "smells" }));
  expect(result.current.isTouched()).toBe(true);
  expect(result.current.isTouched("kilnC")).toBe(false);
  act(() => result.current.set({ kilnC: 870 }));
  expect(result.current.isTouched("kilnC")).toBe(true);
});

test("what was touched outlives the tab with the draft, and is gone when the form begins anew", async () => {
  const at = desk();
  const first = renderHook(() => useForm("kiln", start), at);
  act(() => first.result.current.set({ kilnC: 870 }));
  first.unmount();
  const { result } = renderHook(() => useForm("kiln", start), at);
  await expect.poll(() => result.current.isLooked).toBe(true);
  expect(result.current.isTouched("kilnC")).toBe(true);
  await act(() => result.current.restart());
  expect(result.current.isTouched()).toBe(false);
});

test("a draft from before it was kept counts what differs from the start", async () => {
  const at = desk();
  await writeDraft(at.db, "kiln", { about: "", draft: { kilnC: 900, note: "" } });
  const { result } = renderHook(() => useForm("kiln", start), at);
  await expect.poll(() => result.current.draft.kilnC).toBe(900);
  expect(result.current.isTouched("kilnC")).toBe(true);
  expect(result.current.isTouched("note")).toBe(false);
});
