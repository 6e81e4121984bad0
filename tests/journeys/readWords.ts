import type { Page } from "@playwright/test";
import { linesInStore } from "./store.ts";

/** One block of text as it stands on a screen: a paragraph, a key, a cell, a label. */
export type Block = {
  readonly text: string;
  /** The list entry or table row it stands in, numbered over the screen; what is listed may say the same of each. */
  readonly row: number | null;
  /** True in a fold such as "What this rests on" and in what is marked as a source: there sources stand. */
  readonly isFolded: boolean;
};

/** What people wrote themselves, names and notes, longest first; names in the log are theirs, not the app's. */
export async function ownWords(page: Page): Promise<readonly string[]> {
  const own = new Set<string>();
  const take = (value: unknown): void => {
    if (typeof value === "string") {
      if (value.length > 3 && /[\sA-ZÄÖÜ]/.test(value)) own.add(value);
    } else if (typeof value === "object" && value !== null) for (const one of Object.values(value)) take(one);
  };
  for (const { body } of await linesInStore(page)) take(body);
  return [...own].toSorted((a, b) => b.length - a.length);
}

/** Every block of text on the screen that is open, folds opened, in the order it is read. */
export const blocksOn = (page: Page): Promise<readonly Block[]> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
    const isInline = (element: Element): boolean =>
      /^(inline|contents)$/.test(getComputedStyle(element).display) && element.tagName !== "BUTTON";
    const rows = [...document.querySelectorAll("li, tr, option, label, fieldset, dl > div")];
    const blocks = new Map<Element, string>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (parent === null || parent.closest("script, style, textarea, noscript") !== null) continue;
      if (parent.closest("option") === null && !parent.checkVisibility({ visibilityProperty: true }))
        continue;
      let block = parent;
      while (isInline(block) && block.parentElement !== null) block = block.parentElement;
      const isBreak = node.previousSibling?.nodeName === "BR";
      blocks.set(block, `${blocks.get(block) ?? ""}${isBreak ? " " : ""}${node.textContent ?? ""}`);
    }
    return [...blocks].flatMap(([element, found]) => {
      const text = found.replaceAll(/\s+/g, " ").trim();
      if (text === "") return [];
      const row = element.closest("li, tr, option, label, fieldset, dl > div");
      return [
        {
          text,
          row: row === null ? null : rows.indexOf(row),
          isFolded: element.closest("details > :not(summary), [data-source]") !== null,
        },
      ];
    });
  });
