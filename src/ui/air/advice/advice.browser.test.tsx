import { afterEach, beforeEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, deskNow, showAt, type Desk } from "../../../../tests/demoDesk.tsx";
import { AdvicePage } from "./AdvicePage.tsx";

let desk: Desk;
beforeEach(async () => {
  desk = await demoDesk();
});
afterEach(clearDesks);

const show = (id: string) =>
  showAt(desk.shop, `/piece/${id}/advice`, { route: "/piece/:id/advice", screen: AdvicePage });
const read = (rh: number) =>
  desk.shop.log({
    do: "log",
    stream: "room/first",
    type: "air-read",
    body: { airC: 20, rh, air: "still" },
    at: deskNow - 60_000,
  });
async function dipped(kind: "prime" | "backup", geometry: "open" | "recess"): Promise<void> {
  const plan = { name: "Otter", geometry, material: "wax" } as const;
  const at = deskNow - 20 * 60_000;
  await desk.shop.log({
    do: "log",
    stream: "piece/otter",
    type: "piece-started",
    body: { plan, roomId: "first" },
    at,
  });
  const stuccoId = kind === "prime" ? "80-120" : "16-30";
  const coat = { number: 1, step: null, kind, stuccoId, bucketId: null, roomId: "first", prewet: false };
  await desk.shop.log({ do: "log", stream: "piece/otter", type: "coat-dipped", body: coat, at });
}
const lines = () => page.getByRole("list", { name: /^What would help/ }).getByRole("heading");

test("a recess is told to have air led in first, with the hours it saves and the age of the air", async () => {
  await dipped("backup", "recess");
  await read(0.6);
  show("otter");
  await expect.element(lines().first()).toHaveTextContent("Blow air into the pocket");
  await expect.element(page.getByText(/to go: saves \d+ h/).first()).toBeVisible();
  await expect
    .element(page.getByText(/For the air as last read, 1 min ago: 20.°C, 60%, still room/))
    .toBeVisible();
  await expect.element(page.getByRole("list", { name: "Cautions" })).not.toBeInTheDocument();
});

test("a prime coat on wax carries its cautions in words", async () => {
  await dipped("prime", "open");
  await read(0.5);
  show("otter");
  await expect.element(page.getByText(/keep the room within 1\.7.°C/)).toBeVisible();
  await expect.element(page.getByText(/no direct fan for the first hour/).first()).toBeVisible();
});

test("in air over 80 % it says never, and that only drier or warmer air helps", async () => {
  await dipped("backup", "open");
  await read(0.88);
  show("otter");
  await expect.element(page.getByRole("heading", { name: "As it is: never" })).toBeVisible();
  await expect.element(page.getByText(/dry in/).first()).toBeVisible();
  expect(
    lines()
      .elements()
      .map((line) => line.textContent),
  ).toEqual(["Dehumidify to 45%", "Warm the room by 3\u00a0°C"]);
});

test("a dry coat gets no advice and is told why", async () => {
  show("demo-plaque");
  await expect.element(page.getByText("It is dry already.")).toBeVisible();
});
