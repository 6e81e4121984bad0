import { useMemo } from "react";
import { makeFormat, type Format } from "../format/units.ts";
import { useSettings } from "./live.ts";
import { shopLocale } from "./locale.ts";

/** Numbers in the units and the English of this person; its `locale` serves the times. */
export function useFormat(): Format {
  const [{ units }] = useSettings();
  return useMemo(() => makeFormat(units, shopLocale()), [units]);
}
