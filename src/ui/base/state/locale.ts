import { pickLocale } from "../format/time.ts";

export const shopLocale = (): string => pickLocale(navigator.languages);
