import { cleanup, render, screen } from "@testing-library/react";
import { userEvent } from "vitest/browser";
import { useState } from "react";
import { afterEach, expect, test } from "vitest";
import { startingSettings, type Settings } from "../../../storage/settings.ts";
import { openShopDb } from "../../../storage/shopDb.ts";
import { makeShop, ShopProvider } from "../state/shop.tsx";
import type { Quantity } from "../format/units.ts";
import { NumberField } from "./NumberField.tsx";

let given: number | null | undefined;

function Field(props: { quantity: Quantity; start: number | null; min?: number; max?: number }) {
  const [value, setValue] = useState(props.start);
  const take = (next: number | null): void => {
    given = next;
    setValue(next);
  };
  return (
    <NumberField
      label="Head"
      quantity={props.quantity}
      value={value}
      onChange={take}
      min={props.min}
      max={props.max}
    />
  );
}

async function show(units: Settings["units"], props: Parameters<typeof Field>[0]): Promise<HTMLInputElement> {
  given = undefined;
  const db = openShopDb(`field-${Math.random()}`);
  await db.settings.put({ key: "own", value: { ...startingSettings, units } });
  const opened = { ...startingSettings, units };
  const shop = makeShop({ db, clock: () => 0, newId: () => "id", opened });
  render(
    <ShopProvider shop={shop}>
      <Field {...props} />
    </ShopProvider>,
  );
  return screen.getByRole<HTMLInputElement>("textbox", { name: "Head" });
}

afterEach(cleanup);

test("an American sees and types feet, and the log gets metres", async () => {
  const field = await show("us", { quantity: "m", start: 0.3048 });
  expect(field.value).toBe("1");
  await userEvent.fill(field, "2.5");
  expect(given).toBeCloseTo(0.762, 9);
  expect(field.value).toBe("2.5");
});

test("a percentage is typed and a fraction is kept", async () => {
  const field = await show("metric", { quantity: "percent", start: 0.45 });
  expect(field.value).toBe("45");
  await userEvent.fill(field, "62");
  expect(given).toBeCloseTo(0.62, 9);
});

test("what is being typed is left as it is typed", async () => {
  const field = await show("us", { quantity: "temp", start: null });
  await userEvent.type(field, "7");
  await userEvent.type(field, "1.");
  expect(field.value).toBe("71.");
  expect(given).toBeCloseTo((71 - 32) / 1.8, 9);
});

test("emptied means not known", async () => {
  const field = await show("metric", { quantity: "m", start: 0.5 });
  await userEvent.clear(field);
  expect(given).toBeNull();
  expect(screen.queryByRole("alert")).toBeNull();
});

test("words are refused with a sentence and give no number", async () => {
  const field = await show("metric", { quantity: "m", start: 0.5 });
  await userEvent.fill(field, "tall");
  expect(given).toBeNull();
  expect(screen.getByRole("alert").textContent).toBe("This is not a number.");
  expect(field.value).toBe("tall");
});

test("a number out of range is told in the person's own unit", async () => {
  const field = await show("us", { quantity: "m", start: null, min: 0.01, max: 3.048 });
  await userEvent.fill(field, "12");
  expect(screen.getByRole("alert").textContent?.replace("\u00a0", " ")).toBe(
    "The most that makes sense is 10 ft.",
  );
});
