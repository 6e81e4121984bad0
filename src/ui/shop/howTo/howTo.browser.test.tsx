import { afterEach, expect, test } from "vitest";
import { page } from "vitest/browser";
import { clearDesks, freshDesk, showAt } from "../../../../tests/demoDesk.tsx";
import { howToNames, type HowToId } from "../../base/format/howToNames.ts";
import { paths } from "../../base/state/paths.ts";
import { HowToPage } from "./HowToPage.tsx";
import { HowTosPage } from "./HowTosPage.tsx";

afterEach(clearDesks);

const open = (path: string) => showAt(freshDesk().shop, path, { route: "/how-to/:id", screen: HowToPage });

test.each(Object.entries(howToNames))(
  "the page %s has its steps and a drawing with no label cut",
  async (id, name) => {
    open(paths.howTo(id as HowToId));
    await expect.element(page.getByRole("heading", { level: 1, name })).toBeVisible();
    expect(page.getByRole("list").first().getByRole("listitem").elements().length).toBeGreaterThan(3);
    const drawing = page.getByRole("img").element();
    expect(drawing.getAttribute("aria-label")).toMatch(/\.$/);
    const frame = drawing.getBoundingClientRect();
    expect(frame.height).toBeGreaterThan(100);
    const labels = [...drawing.querySelectorAll("text")].map((label) => ({
      text: label.textContent,
      box: label.getBoundingClientRect(),
    }));
    const cut = labels.filter(
      ({ box }) =>
        box.left < frame.left || box.right > frame.right || box.top < frame.top || box.bottom > frame.bottom,
    );
    expect(cut.map(({ text }) => text)).toEqual([]);
    const onOne = labels.flatMap((one, place) =>
      labels
        .slice(place + 1)
        .filter(({ box }) => {
          const wide = Math.min(one.box.right, box.right) - Math.max(one.box.left, box.left);
          const high = Math.min(one.box.bottom, box.bottom) - Math.max(one.box.top, box.top);
          // Two lines of one label touch by their line height.
          return wide > 0 && high > 6;
        })
        .map(({ text }) => `${one.text} / ${text}`),
    );
    expect(onOne).toEqual([]);
  },
);

test("the way back is the form that asked", async () => {
  const { places } = open(paths.howTo("weigh", "/piece/a/weigh"));
  await page.getByRole("link", { name: "Back to the form" }).click();
  await expect.poll(() => places.at(-1)).toBe("/piece/a/weigh");
});

test.each(["//elsewhere.example", "https://elsewhere.example", ""])(
  "no way back leads out of the app: %s",
  async (from) => {
    open(`/how-to/cup?from=${encodeURIComponent(from)}`);
    await expect
      .element(page.getByRole("link", { name: "Back", exact: true }))
      .toHaveAttribute("href", paths.howTos);
    expect(page.getByRole("link", { name: "Back to the form" }).elements()).toEqual([]);
  },
);

test("a page that is not there leads to the list", async () => {
  open("/how-to/nothing-of-ours");
  await expect.element(page.getByText("No such page")).toBeVisible();
});

test("the list leads to every page", async () => {
  showAt(freshDesk().shop, paths.howTos, { route: paths.howTos, screen: HowTosPage });
  for (const [id, name] of Object.entries(howToNames))
    await expect
      .element(page.getByRole("link", { name: new RegExp(`^${name}`) }))
      .toHaveAttribute("href", paths.howTo(id as HowToId));
});
