import { expect, type Locator, type Page } from "@playwright/test";
import type { Hands } from "./hands.ts";

export type Place = "Rack" | "Dip" | "Rooms" | "Shop";
export type Kind = "Prime" | "Intermediate" | "Backup" | "Seal";
export type Air = { readonly tempC: number; readonly rh: number; readonly moves?: string };

export type PlanWords = {
  readonly material?: string;
  readonly recipe?: string;
  readonly flatMm?: readonly [width: number, length: number];
  readonly headMm?: number;
  readonly alloy?: string;
  readonly metalKg?: number;
};

/** What a maker does in the shop, in their own words, done by touch and told by what the screen says. */
export function makerAt(page: Page, { tap }: Hands) {
  const key = (name: string | RegExp): Locator => page.getByRole("button", { name });
  const onScreen = (title: string | RegExp) =>
    expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();

  const goTo = async (place: Place): Promise<void> => {
    await tap(page.getByRole("navigation", { name: "Main" }).getByRole("link", { name: place }));
  };

  /** One of a few, side by side. */
  const choose = (question: string | RegExp, answer: string): Promise<void> =>
    tap(page.getByRole("group", { name: question }).getByRole("radio", { name: answer, exact: true }));

  /** The clock goes on; what is on the screen is looked at again. */
  const waitHours = async (hours: number): Promise<void> => {
    await page.clock.fastForward(Math.round(hours * 3_600_000));
  };

  /** By its name and number of coats; the size it is for stands behind them. */
  const chooseRecipe = async (name: string): Promise<void> => {
    const field = page.getByLabel("Recipe", { exact: true });
    const option = field.locator("option").filter({ hasText: name });
    await field.selectOption((await option.getAttribute("value")) ?? "");
  };

  /** A name and, if given, a recipe from the start. */
  const startPiece = async (name: string, { recipe }: { readonly recipe?: string } = {}): Promise<void> => {
    await goTo("Rack");
    await tap(page.getByRole("link", { name: "Start a piece", exact: true }));
    await onScreen("New piece");
    await page.getByLabel("Name").fill(name);
    if (recipe !== undefined) await chooseRecipe(recipe);
    await tap(key("Start it"));
    await expect(
      page.getByRole("list", { name: "Pieces in work" }).getByText(name, { exact: true }),
    ).toBeVisible();
  };

  /** Fills in what is known on the plan that is open, and saves it. */
  const fillPlan = async (plan: PlanWords): Promise<void> => {
    await onScreen("Plan");
    if (plan.material !== undefined) await choose("Made of", plan.material);
    if (plan.recipe !== undefined) await chooseRecipe(plan.recipe);
    if (plan.flatMm !== undefined) {
      await choose(/^The weakest part of the shell/, "A flat panel");
      await page.getByLabel("Width of the flat").fill(String(plan.flatMm[0]));
      await page.getByLabel("Length of the flat").fill(String(plan.flatMm[1]));
    }
    if (plan.headMm !== undefined) await page.getByLabel("Head", { exact: true }).fill(String(plan.headMm));
    if (plan.alloy !== undefined)
      await page.getByRole("combobox", { name: "Alloy" }).selectOption({ label: plan.alloy });
    if (plan.metalKg !== undefined)
      await page.getByLabel("Metal", { exact: true }).fill(String(plan.metalKg));
    await tap(key("Save the plan"));
  };

  const stepTo = async (name: string, wanted: number, step: number): Promise<void> => {
    const shown = page.getByRole("spinbutton", { name });
    // An empty one takes its first figure from the first tap.
    if ((await shown.getAttribute("aria-valuenow")) === null) {
      await tap(key(`${name}: more`));
      await expect(shown).toHaveAttribute("aria-valuenow", /\d/);
    }
    const from = Number(await shown.getAttribute("aria-valuenow"));
    const steps = Math.round((wanted - from) / step);
    for (let i = 0; i < Math.abs(steps); i += 1) await tap(key(`${name}: ${steps > 0 ? "more" : "less"}`));
    await expect(shown).toHaveAttribute("aria-valuetext", /\d/);
    expect(Number(await shown.getAttribute("aria-valuenow"))).toBeCloseTo(wanted, 6);
  };

  /** Reads thermometer and hygrometer in the room the shop starts with. */
  const readAir = async ({ tempC, rh, moves }: Air): Promise<void> => {
    await goTo("Rooms");
    await tap(page.getByRole("link", { name: /^Drying room/ }));
    await onScreen("Drying room");
    await stepTo("Temperature", tempC, 0.5);
    await stepTo("Humidity", rh, 0.01);
    const isEmpty = await page.getByText("Air: not set").isVisible();
    if (moves !== undefined || isEmpty) {
      // A room's first form stands open here; a later one is folded.
      if (!isEmpty) await tap(page.getByText(/^Air: /));
      await choose(/^Air movement/, moves ?? "Still room");
    }
    await tap(key(/^(Log this reading|Same as last: )/));
    await expect(page.getByText(/^Logged for Drying room/)).toBeVisible();
  };

  /** Stands at the bucket, with the coat the rack asks for. */
  const beginDip = async (kind: Kind): Promise<void> => {
    await goTo("Dip");
    await onScreen("What are you dipping?");
    await tap(key(new RegExp(`^${kind}`)));
    await onScreen(new RegExp(`^${kind}`));
  };

  /** A coat the recipe did not ask for: bucket and kind are chosen by hand. */
  const beginDipFrom = async (bucket: string, kind: Kind): Promise<void> => {
    await goTo("Dip");
    await expect(page.getByRole("heading", { level: 1, name: /dipping|bucket/ })).toBeVisible();
    const other = key("Another bucket or coat");
    if (await other.isVisible()) await tap(other);
    await onScreen("Which bucket?");
    await tap(key(new RegExp(`^${bucket}`)));
    await onScreen(`${bucket}: which coat?`);
    await tap(key(kind));
    await onScreen(new RegExp(`^${kind}`));
  };

  const tile = (name: string): Locator => key(new RegExp(`^${name}`));
  const settled = (name: string): Locator => page.getByRole("group", { name, exact: true });

  /** Turns to the screenful on which the piece is. */
  const turnTo = async (name: string): Promise<void> => {
    const place = tile(name).or(settled(name));
    await expect(key("Something else")).toBeVisible();
    for (let turns = 0; turns < 20 && !(await place.isVisible()); turns += 1)
      await tap(key(/^(Next pieces|Back to the first pieces)/));
    await expect(place).toBeVisible();
  };

  const coatIsOn = (name: string) => expect(settled(name)).toContainText(/Coat \d+ done/);

  /** One tap, and the screen says that the coat is in the log. */
  const coatDone = async (name: string): Promise<void> => {
    await tap(tile(name));
    await coatIsOn(name);
  };

  const leaveBucket = async (): Promise<void> => {
    await tap(key("Done dipping"));
    await onScreen("Rack");
  };

  const dipCoat = async (kind: Kind, ...names: readonly string[]): Promise<void> => {
    await beginDip(kind);
    for (const name of names) await coatDone(name);
    await leaveBucket();
  };

  const openPiece = async (name: string): Promise<void> => {
    await goTo("Rack");
    await tap(
      page.getByRole("list", { name: "Pieces in work" }).getByRole("link", { name: new RegExp(name) }),
    );
    await onScreen(name);
  };

  /** The lines of the log that the open piece's screen shows, newest first, each as it reads. */
  const logLines = (): Locator =>
    page.getByRole("region", { name: "Log", exact: true }).getByRole("listitem");

  /** Those that are folded away too. */
  const wholeLog = async (): Promise<Locator> => {
    const all = key(/^All \d+ lines$/);
    await expect(logLines().first()).toBeVisible();
    if (await all.isVisible()) await tap(all);
    await expect(all).toBeHidden();
    return logLines();
  };

  /** From the open piece to the form of one thing that can be logged of it. */
  const openLog = async (what: string): Promise<void> => {
    await tap(page.getByRole("button", { name: "Log", exact: true }));
    const group = page
      .locator("details")
      .filter({ has: page.getByRole("link", { name: what, exact: true, includeHidden: true }) });
    if ((await group.getAttribute("open")) === null) await tap(group.locator("summary"));
    await tap(group.getByRole("link", { name: what, exact: true }));
    await expect(key(/^(Log it|Coat done|Skip this coat|Moved|Scrap it)/)).toBeVisible();
  };

  /** Fills in the form that is open and logs it; back on the piece. */
  const logIt = async (fields: Readonly<Record<string, string>> = {}): Promise<void> => {
    for (const [label, text] of Object.entries(fields))
      await page.getByLabel(label, { exact: true }).fill(text);
    await tap(key("Log it"));
    await expect(page.getByRole("region", { name: "What is next" })).toBeVisible();
  };

  const logFor = async (what: string, fields: Readonly<Record<string, string>>): Promise<void> => {
    await openLog(what);
    await logIt(fields);
  };

  return {
    page,
    tap,
    key,
    onScreen,
    choose,
    goTo,
    waitHours,
    chooseRecipe,
    startPiece,
    fillPlan,
    readAir,
    beginDip,
    beginDipFrom,
    tile,
    settled,
    turnTo,
    coatIsOn,
    coatDone,
    leaveBucket,
    dipCoat,
    openPiece,
    logLines,
    wholeLog,
    openLog,
    logIt,
    logFor,
  };
}
