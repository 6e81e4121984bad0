import type { InstructionCode } from "../../../physics/heat/firingSegments.ts";

type Instruction = {
  readonly title: string;
  /** What there is to see, and what can hurt. */
  readonly says: string;
  /** Short enough for the chart's table and the calendar. */
  readonly short: string;
};

/** What there is to do at the kiln; common practice, no source. */
export const instructionWords: Readonly<Record<InstructionCode, Instruction>> = {
  "extraction-on": {
    title: "Extraction on, doors to the house shut",
    says: "Pattern smoke is toxic and flammable. Under a hood or outdoors. Stay upwind.",
    short: "extraction on",
  },
  "openings-checked": {
    title: "Check that cup, drains and vents are open",
    says: "Trim the shell off every opening and look through. Trapped pattern cracks the shell.",
    short: "openings checked",
  },
  "cup-down": {
    title: "Place the shell cup down",
    says: "The pattern runs out of the cup. Leave an air gap and keep the opening clear.",
    short: "cup down",
  },
  "pan-outside": {
    title: "Open the hole in the floor, pan outside under it",
    says: "The wax runs through the floor into a steel pan outside the kiln. Keep its lid beside it. No tray inside: wax on it burns as a pool. No water, ever.",
    short: "pan outside",
  },
  "tray-in": {
    title: "Put the tray under the cup",
    says: "A steel tray, large enough for all the wax. Take it out before the kiln gets hotter.",
    short: "tray in",
  },
  "tray-out": {
    title: "Kiln off. Take the tray out. Shut the door.",
    says: "Shield and gloves on, carry it level and put its lid on outside. Kiln on again only when the tray is out. No water on hot wax.",
    short: "kiln off, tray out",
  },
  "load-hot": {
    title: "Put the shell into the hot kiln",
    says: "Power off, long tongs, face shield, heat gloves, no synthetic clothes. Stand aside and shut the door at once: flames come back out of it.",
    short: "load hot",
  },
  "vents-open": {
    title: "Open the kiln’s vents",
    says: "The pattern starts to smoke. Without air it soots the shell and can flash when you open the door.",
    short: "vents open",
  },
  "drain-watched": {
    title: "Watch it run out",
    says: "Look from the side, with a shield. It can catch fire: keep a lid and dry sand at hand.",
    short: "watch it drain",
  },
  "carbon-checked": {
    title: "Look inside for carbon",
    says: "Grey or black inside is carbon: hold longer with air. White powder is ash: blow it out cold. Shield on, power off before the door is opened.",
    short: "look for carbon",
  },
  "inspect-cold": {
    title: "Cold: look the shell over",
    says: "Keep the door shut until now. Tap it, look for cracks at edges and cup, and log what you find.",
    short: "look it over, cold",
  },
  "keep-hot": {
    title: "Keep it here until the metal is ready",
    says: "Out of the kiln it cools in minutes. Take it out only when the metal is at temperature.",
    short: "keep hot for the pour",
  },
};
