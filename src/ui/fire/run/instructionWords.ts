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
    says: "Pattern smoke is poisonous and it burns. Under a hood or outdoors, nobody downwind.",
    short: "extraction on",
  },
  "openings-checked": {
    title: "Check that cup, drains and vents are open",
    says: "Trim the shell off every opening and look through: what can’t run out cracks the wall.",
    short: "openings checked",
  },
  "cup-down": {
    title: "Stand the shell cup down",
    says: "The pattern runs out of the cup. Leave a way for air; nothing may block the opening.",
    short: "cup down",
  },
  "pan-outside": {
    title: "Open the hole in the floor, pan outside under it",
    says: "The wax runs through the floor into a steel pan outside the kiln. Keep its lid beside it. No tray inside: wax on it burns as a pool. No water, ever.",
    short: "pan outside",
  },
  "tray-in": {
    title: "Put the tray under the cup",
    says: "A steel tray, large enough for all the wax. It comes out before the kiln goes hotter.",
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
    says: "The pattern begins to smoke. It needs air to burn away; shut in, it soots the shell and can flash when the door is opened.",
    short: "vents open",
  },
  "drain-watched": {
    title: "Watch it run out",
    says: "Look from the side, with a shield. What runs out can catch fire: keep a lid and dry sand at hand.",
    short: "watch it drain",
  },
  "carbon-checked": {
    title: "Look inside for carbon",
    says: "Grey or black inside is carbon: hold longer with air. White powder is ash: blow it out cold. Shield on, power off before the door is opened.",
    short: "look for carbon",
  },
  "inspect-cold": {
    title: "Cold: look the shell over",
    says: "Leave the door shut until here. Tap it, look for cracks at edges and cup, and log what you find.",
    short: "look it over, cold",
  },
  "keep-hot": {
    title: "Keep it here until the metal is ready",
    says: "Out of the kiln it loses its heat in minutes. Take it out only when the metal is at its temperature.",
    short: "keep hot for the pour",
  },
};
