import { mkdirSync, writeFileSync } from "node:fs";
import { expect, test, type Page } from "@playwright/test";
import { textsOfCatalogue } from "../catalogueTexts.ts";
import { faultsOfText, sentencesOf, wordsIn } from "../wordRules.ts";
import { fillUp } from "./overfullShop.ts";
import { blocksOn, ownWords, type Block } from "./readWords.ts";
import {
  demoFire,
  demoShop,
  formsOf,
  sameInAnyShop,
  screensOf,
  screensOfPiece,
  type Screen,
} from "./screens.ts";
import { coatOf, goToScreen, loadDemo, piecesOnRack, visitThenOffline } from "./visits.ts";

test.describe.configure({ mode: "parallel" });

/** The same day and hour at every run, so that every run reads the same words. */
const noon = new Date("2026-03-11T11:00:00Z");
/** `npm run words` makes its page from what is read here. */
const folder = process.env["DIPBOOK_WORDS"];

type Read = { readonly screen: string; readonly blocks: readonly Block[] };

/** A name or a note of the maker's stands as this sign: its words are not the app's. */
const ownSign = "◦";

async function readAll(page: Page, name: string, screens: readonly Screen[]): Promise<readonly Read[]> {
  const own = await ownWords(page);
  const withoutOwn = (text: string): string =>
    own.reduce((left, words) => left.replaceAll(words, ownSign), text);
  const all: Read[] = [];
  for (const screen of screens) {
    await goToScreen(page, screen);
    const blocks = await blocksOn(page);
    all.push({
      screen: screen[0],
      blocks: blocks.map((block) => ({ ...block, text: withoutOwn(block.text) })),
    });
  }
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${folder}/${name}.json`, JSON.stringify(all));
    writeFileSync(`${folder}/catalogue.json`, JSON.stringify(await textsOfCatalogue()));
  }
  return all;
}

/** Figures and their sources have pages of their own. */
const isOfSources = (screen: string): boolean => /^\/(figures$|fire\/alloys\/)/.test(screen);

/** What is wrong with the words of these screens, each fault once with the first screen it stands on. */
function faultsIn(reads: readonly Read[]): readonly string[] {
  const faults = new Map<string, string>();
  for (const { screen, blocks } of reads) {
    const note = (fault: string): void => void (faults.has(fault) || faults.set(fault, screen));
    const saidIn = new Map<string, number | null>();
    for (const { text, row, isFolded } of blocks) {
      faultsOfText(text, isFolded || isOfSources(screen)).forEach(note);
      if (isFolded) continue;
      for (const one of sentencesOf(text)) {
        if (!one.endsWith(".") || wordsIn(one) < 4) continue;
        const before = saidIn.get(one);
        // Two things in a list may be in the same state, and each says so.
        const isOfTwoThings = typeof before === "number" && row !== null && before !== row;
        if (saidIn.has(one) && !isOfTwoThings) note(`twice on one screen: ${one}`);
        saidIn.set(one, row);
      }
    }
  }
  return [...faults].map(([fault, screen]) => `${screen}: ${fault}`);
}

test("every screen of a shop at work is in the words of the trade", async ({ page }) => {
  await page.clock.install({ time: noon });
  await visitThenOffline(page);
  const pieces = await loadDemo(page);
  const coat = await coatOf(page, "/piece/demo-carp");
  const reads = await readAll(page, "typical", [
    ...sameInAnyShop,
    ...screensOf(demoShop),
    ...demoFire,
    ...pieces.map((piece): Screen => [piece, /^Demo/]),
    ...screensOfPiece("demo-carp"),
    coat,
    ...screensOfPiece("demo-medals").slice(1),
    ...formsOf("demo-carp"),
  ]);
  expect(reads.flatMap(({ blocks }) => blocks).length).toBeGreaterThan(3_000);
  expect(faultsIn(reads)).toEqual([]);
});

test("every screen of an overfull shop is in the words of the trade", async ({ page }) => {
  await page.clock.install({ time: noon });
  await visitThenOffline(page);
  await loadDemo(page);
  await fillUp(page);
  await page.reload();
  const pieces = await piecesOnRack(page);
  expect(pieces.length).toBeGreaterThan(20);
  const reads = await readAll(page, "overfull", [
    ...screensOf(demoShop).map(([path]): Screen => [path, /./]),
    ...pieces.slice(0, 16).map((piece): Screen => [piece, /./]),
  ]);
  expect(faultsIn(reads)).toEqual([]);
});
