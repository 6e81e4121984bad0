/** How far away the board is read from, m. */
const fromM = 3;

/**
 * The least height of a capital letter as an angle at the eye, minutes of arc. ISO 9241-3 and NUREG-0700 rev. 2, 1.3.1-4:
 * 16 at least, 20 to 22 preferred where text is read on.
 */
const leastArcMin = 16;

/** The height of a screen of 24 inches across its corners, 16 to 9, mm: the usual second-hand monitor on a shop's wall. */
const screenMm = (24 * 25.4 * 9) / Math.hypot(16, 9);

/** A capital letter's height as a share of the font's size: Inter's own figure, 1490 of 2048 units. */
const capital = 1490 / 2048;

/** How tall a capital is that fills so many minutes of arc, mm, from so many metres: NUREG-0700 rev. 2, 1.3.1-4. */
const capitalMm = (arcMin: number, awayM: number): number => (2 * Math.PI * awayM * 1000 * arcMin) / 21_600;

/** The least size of any text on the board, in hundredths of the screen's shorter side. */
export const leastText = (100 * capitalMm(leastArcMin, fromM)) / capital / screenMm;
