import type { DewaxWay } from "../../../logbook/entries/shellFireBodies.ts";

const panOfWax =
  "The pan of hot wax burns if it catches fire: lid beside it, clear of the kiln. No water, ever.";

/** What can hurt at each way of getting wax out; common practice, no source. */
export const dewaxCautions: Readonly<Record<DewaxWay, readonly string[]>> = {
  flash: [
    "Flames come out of the door as the shell goes in. Face shield, heat gloves, long tongs; stand aside, not in front.",
    "The wax runs through a hole in the floor into a steel pan outside the kiln. Never a tray inside a hot kiln.",
    panOfWax,
  ],
  steam: [
    "An autoclave is a pressure vessel. Use only a licensed, inspected one, by its own instructions. Never improvise one.",
    "Steam and hot wax burn. Pressure down to nothing before the door moves; shield and gloves.",
    "The shell comes out wet: dry it before it is fired.",
  ],
  "hot-water": [
    "Scalds: lift and drain the shell slowly, gloves to the elbow, nothing that can tip. Hot water stays inside it.",
    "Wax floats on the water: skim it cold. Never melt leftover wax over a flame.",
    "The shell comes out wet: dry it before it is fired.",
  ],
  staged: [
    "Wax fumes catch fire and are bad to breathe: hood or open air, and someone stays with it.",
    "A tray of wax in a kiln that goes on heating burns as a pool. Kiln off, tray out, door shut, then on.",
    panOfWax,
  ],
};
