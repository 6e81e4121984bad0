// Physics imports no package, so these stand here; every other layer takes the same figures from date-fns/constants.
export const minuteMs = 60_000;
export const hourMs = 60 * minuteMs;
export const dayMs = 24 * hourMs;
export const dayS = 86_400;
