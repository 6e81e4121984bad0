import { makeBell } from "../../../device/tone.ts";

/** The bell that due times and timers ring; one for the page, as each sets its ringing in place of the last. */
export const bell = makeBell();

/** The short answer to a tap at the bucket. Apart from the bell, so that a tap does not take back a timer's ringing. */
export const tapBell = makeBell();

/** Call it from a touch: browsers let no page sound before one. */
export async function unlockBells(): Promise<void> {
  await Promise.all([bell.unlock(), tapBell.unlock()]);
}
