import { offerNames, rescueText } from "./rescueWords.ts";
import type { Offer, StartProblem } from "./startProblem.ts";
import { offersFor } from "./startProblem.ts";

/** What a key of the plain page does; the promise gives the sentence to show, or null where the page is left anyway. */
export type RescueActions = { readonly [K in Offer]: () => Promise<string | null> };

export type RescuePage = {
  readonly show: (problem: StartProblem) => void;
  readonly hide: () => void;
  /** A new version waits: the page offers it. */
  readonly offerVersion: (take: () => void) => void;
};

/**
 * A page made of plain elements, for when nothing else can be drawn: it needs neither the store nor the page's
 * framework. It covers whatever stands in `host` and goes away without a trace.
 */
export function makeRescuePage(host: HTMLElement, actions: RescueActions): RescuePage {
  const page = element("div", { className: "rescue", role: "alert" });
  const title = element("h1", {});
  const text = element("div", { className: "rescue-text" });
  const keys = element("div", { className: "rescue-keys" });
  const result = element("p", { className: "rescue-result", role: "status" });
  const inner = element("div", { className: "rescue-inner" });
  inner.append(title, text, keys, result);
  page.append(inner);
  let shown: StartProblem | null = null;
  let takeVersion: (() => void) | null = null;

  const drawKeys = (): void => {
    if (shown === null) return;
    const take = takeVersion;
    keys.replaceChildren(
      ...(take === null ? [] : [key("Use the new version", take)]),
      ...offersFor(shown).map((offer) => key(offerNames[offer], () => void act(offer))),
    );
  };
  const act = async (offer: Offer): Promise<void> => {
    const all = [...keys.querySelectorAll("button")];
    for (const one of all) one.disabled = true;
    result.textContent = "At work…";
    try {
      result.textContent = (await actions[offer]()) ?? "";
    } catch (error) {
      result.textContent = `That did not work. ${error instanceof Error ? error.message : String(error)}`;
    }
    for (const one of all) one.disabled = false;
  };

  return {
    show: (problem) => {
      const said = rescueText(problem);
      title.textContent = said.title;
      text.replaceChildren(...said.lines.map((line) => element("p", { textContent: line })));
      const isNew = shown?.kind !== problem.kind;
      shown = problem;
      if (!isNew) return;
      result.textContent = "";
      drawKeys();
      host.append(page);
      host.dataset["rescue"] = problem.kind;
    },
    hide: () => {
      shown = null;
      page.remove();
      delete host.dataset["rescue"];
    },
    offerVersion: (take) => {
      takeVersion = take;
      drawKeys();
    },
  };
}

function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  { className = "", role, textContent }: { className?: string; role?: string; textContent?: string },
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  if (className !== "") made.className = className;
  if (role !== undefined) made.setAttribute("role", role);
  if (textContent !== undefined) made.textContent = textContent;
  return made;
}

function key(name: string, press: () => void): HTMLButtonElement {
  const made = element("button", { textContent: name });
  made.type = "button";
  made.addEventListener("click", press);
  return made;
}
