import { afterEach, expect, test, vi } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, demoDesk, showAt } from "../../../tests/demoDesk.tsx";
import { block, studyOfMesh } from "../../../tests/meshes/testStudy.ts";
import { readMelts } from "../../storage/fires.ts";
import { putPattern } from "../../storage/patterns.ts";
import { readRack, readShop } from "../../storage/reads.ts";
import { paths } from "../base/state/paths.ts";
import type { ShopDoor } from "../base/state/shop.tsx";
import { Routes } from "./Routes.tsx";

vi.mock("../../storage/reads.ts", { spy: true });
vi.mock("../../storage/fires.ts", { spy: true });

afterEach(async () => {
  vi.restoreAllMocks();
  await clearDesks();
});

const never = new Promise<never>(() => undefined);
const show = (shop: ShopDoor, path: string) => showAt(shop, path, { route: "*", screen: Routes });
/** Long enough for all else on a page to be read. */
const settled = () => new Promise((done) => setTimeout(done, 1500));

test("a run is not planned by built-in figures before the shop's own are read", async () => {
  const { shop } = await demoDesk();
  vi.mocked(readShop).mockReturnValue(never);
  show(shop, paths.newRun);
  await expect.element(page.getByRole("heading", { name: "Plan a kiln run" })).toBeVisible();
  await settled();
  await expect.element(page.getByRole("radio", { name: /^Burnout/ })).not.toBeInTheDocument();
  vi.mocked(readShop).mockRestore();
  show(shop, paths.newRun);
  await expect.element(page.getByRole("radio", { name: /^Burnout/ }).first()).toBeVisible();
});

test("a pattern is not offered to an empty rack before the rack is read", async () => {
  const { shop, db } = await demoDesk();
  const study = studyOfMesh(block(40, 40, 60));
  await putPattern(db, { id: study.id, name: study.name, savedAt: 0, kept: study });
  vi.mocked(readRack).mockReturnValue(never);
  show(shop, paths.pattern(study.id));
  await expect.element(page.getByRole("heading", { name: "Kept on this device" })).toBeVisible();
  await settled();
  await expect.element(page.getByRole("heading", { name: "Use it" })).not.toBeInTheDocument();
});

test.each([
  ["the melts are read, whose mix may be worse than the alloy", readMelts],
  ["the shop is read, which alone knows its own alloys", readShop],
])("no cautions stand at a form before %s", async (_, read) => {
  const { shop } = await demoDesk();
  vi.mocked(read as typeof readShop).mockReturnValue(never);
  show(shop, paths.logFor("demo-heron", "shell-fired"));
  await expect.element(page.getByRole("button", { name: "Log it" })).toBeVisible();
  await settled();
  await expect.element(page.getByRole("region", { name: "Cautions" })).not.toBeInTheDocument();
  vi.mocked(read as typeof readShop).mockRestore();
  show(shop, paths.logFor("demo-heron", "shell-fired"));
  await expect.element(page.getByRole("region", { name: "Cautions" }).first()).toBeVisible();
});
