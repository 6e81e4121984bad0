import type { Basis } from "../../../trade/published.ts";

/** What a figure rests on, as it is said before its source. */
export const figureBasisWords: Readonly<Record<Basis, string>> = {
  measured: "Measured",
  published: "Published",
  practice: "Common practice",
  judgement: "Judgement",
  own: "Your own",
};

/** Words a source may begin with that its basis says already. */
const saidAlready: Readonly<Record<Basis, RegExp>> = {
  measured: /^measured[:,;]? ?/,
  published: /^published[:,;]? ?/,
  practice: /^common practice(, no source)?[:;,]? ?/,
  judgement: /^(judgement|estimate|starting value)(, no source)?[:;,]? ?/,
  own: /^the shop's own[:;,]? ?/,
};

/** Basis and source in one: "Common practice: 12–24 h", "Judgement". */
export function basisAndSource(basis: Basis, source: string): string {
  const rest = source.replace(saidAlready[basis], "");
  return rest === "" ? figureBasisWords[basis] : `${figureBasisWords[basis]}: ${rest}`;
}
