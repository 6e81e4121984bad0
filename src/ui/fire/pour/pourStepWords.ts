import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { PourTrack } from "../../../logbook/entries/fireBodies.ts";
import type { Clash, HoldAdvice } from "../../../physics/metal/pourDay.ts";
import { clockTime, duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";

export const trackNames: Readonly<Record<PourTrack, string>> = {
  shell: "Shell",
  sand: "Sand",
  metal: "Metal",
  tools: "Tools",
  people: "People",
};

export const lateWords: Readonly<Record<PourTrack, string>> = {
  shell: "the shell is late",
  sand: "the sand is late",
  metal: "the metal is late",
  tools: "the tools are late",
  people: "the people are late",
};

type StepWords = {
  readonly title: string;
  /** What its key says while it has not begun, and once it has. */
  readonly start: string;
  readonly done: string;
  readonly says: string;
};

const words: Readonly<Record<string, StepWords>> = {
  "shell-preheated": {
    title: "Heat the shell through",
    start: "Kiln is on",
    done: "Shell is soaked",
    says: "The shell reaches the kiln’s temperature only after a soak.",
  },
  "sand-heated": {
    title: "Heat the sand",
    start: "Sand is on the heat",
    done: "Sand is hot",
    says: "Dry right through: damp sand makes metal explode.",
  },
  "crucible-warmed": {
    title: "Warm crucible and ingots",
    start: "Crucible is warming",
    done: "Crucible is hot",
    says: "Slowly and evenly. Ingots wait on the furnace until dry and hot.",
  },
  "metal-melted": {
    title: "Melt",
    start: "Melting",
    done: "Metal is at temperature",
    says: "Done when the thermocouple shows the pouring temperature.",
  },
  "metal-skimmed": {
    title: "Skim and measure the metal",
    start: "Skimming",
    done: "Skimmed",
    says: "With a dry, hot skimmer. Then measure the metal once more.",
  },
  "tools-laid-out": {
    title: "Lay out tools and path",
    start: "Laying out",
    done: "Laid out",
    says: "Tongs, shank, skimmer, ingot mould, dry sand. Walk the way to the shell once with empty hands.",
  },
  "tools-heated": {
    title: "Heat tools and ingot mould",
    start: "Tools are on the heat",
    done: "Tools are hot and dry",
    says: "Preheat everything that touches metal.",
  },
  "people-dressed": {
    title: "Dress, and assign jobs",
    start: "Dressing",
    done: "Dressed",
    says: "Face shield, leathers, gloves, boots. Agree one word that stops everyone.",
  },
  "sheet-checked": {
    title: "Go through the pour sheet",
    start: "Checking",
    done: "Sheet done",
    says: "Each line OK, or a no-go.",
  },
  "all-stand-ready": {
    title: "Everyone at their place",
    start: "Crew in place",
    done: "All ready",
    says: "Clear the area.",
  },
};

export const stepWords = (id: string): StepWords =>
  words[id] ?? { title: id.replaceAll("-", " "), start: "Started", done: "Done", says: "" };

/** What to hold and for how long, as an order. */
export function holdWords(advice: HoldAdvice, { locale, now }: { locale: string; now: number }): string {
  const left = duration(Math.max(minuteMs, advice.untilAt - Math.max(now, advice.fromAt)));
  const until = clockTime(advice.untilAt, locale);
  if (advice.kind === "again") {
    const keeps = advice.maxHoldMin === null ? "" : `, longer than the ${advice.maxHoldMin} min it keeps`;
    const at = advice.startAt === null ? "" : ` from ${clockTime(advice.startAt, locale)}`;
    return `${thing(advice)} would wait ${duration(advice.minutes * minuteMs)}${keeps}: ${again[advice.holdAs]}${at}.`;
  }
  switch (advice.holdAs) {
    case "keep-in-kiln":
      return `Shell soaked at ${clockTime(advice.fromAt, locale)}, pour at ${until}: keep it in the kiln ${left}.`;
    case "keep-sand-hot":
      return `Keep the sand on the heat ${left}, until ${until}.`;
    case "hold-metal-skim":
      return `Hold the metal ${left}${advice.skimAt === null ? "" : `; skim at ${clockTime(advice.skimAt, locale)}`}.`;
    case "keep-hot":
      return `${thing(advice)} stays in the heat ${left}, until ${until}.`;
    case "stand-ready":
      return `Nothing to do for ${left}, until ${until}.`;
  }
}

const thing = ({ step, holdAs }: HoldAdvice): string => {
  if (holdAs === "hold-metal-skim") return "The metal";
  if (holdAs === "keep-in-kiln") return "The shell";
  if (holdAs === "keep-sand-hot") return "The sand";
  if (step === "crucible-warmed") return "The crucible";
  if (step === "tools-heated") return "Tools";
  return `“${stepWords(step).title}”`;
};

const again: Readonly<Record<HoldAdvice["holdAs"], string>> = {
  "keep-in-kiln": "heat it again",
  "keep-sand-hot": "heat it again",
  "hold-metal-skim": "turn it down, then heat it again",
  "keep-hot": "put it back in the heat",
  "stand-ready": "do it again",
};

/** Two things that want the same hands or the same tool. */
export function clashWords({ what, fromAt, untilAt, steps }: Clash, format: Format): string {
  const names = steps.map(({ step }) => `“${stepWords(step).title}”`).join(" and ");
  const span = `${clockTime(fromAt, format.locale)}–${clockTime(untilAt, format.locale)}`;
  return what === "people"
    ? `${span}: ${names} need more people than you have. Start one earlier, or get help.`
    : `${span}: ${names} both need the ${what}.`;
}
